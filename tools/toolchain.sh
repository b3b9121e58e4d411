# Sourced by ./loopwright and ./check: finds Java 17 or later and Maven, or installs them on Debian and Ubuntu as root.

need_package() { # command, Debian package, what to say elsewhere
  command -v "$1" >/dev/null 2>&1 && return 0
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    echo "Installing $2 ..." >&2
    { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$2"; } >&2
  else
    echo "Loopwright needs $3: please install it and run this command again." >&2
    exit 2
  fi
}

need_java() {
  need_package java openjdk-17-jdk-headless "Java 17 or later (a JDK)"
}

need_build_tools() {
  need_package javac openjdk-17-jdk-headless "a JDK, version 17 or later"
  need_package mvn maven "Apache Maven 3.8 or later"
}
