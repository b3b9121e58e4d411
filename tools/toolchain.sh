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

# The tests of the bench drive a real browser; without one they are skipped, and say so.
want_browser() {
  command -v chromium >/dev/null 2>&1 && command -v chromedriver >/dev/null 2>&1 && return 0
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    echo "Installing chromium for the tests of the bench ..." >&2
    { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
        chromium chromium-driver fonts-dejavu-core; } >&2 || echo "It could not be installed; those tests are skipped." >&2
  else
    echo "Without chromium and chromium-driver the tests of the bench are skipped." >&2
  fi
}
