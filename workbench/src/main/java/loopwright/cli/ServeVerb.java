package loopwright.cli;

import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright serve}: the bench in the browser, of this computer or, with accounts, of others. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description =
                "Serves the bench to the browser; Ctrl-C ends it. Without accounts it answers this computer only.")
public final class ServeVerb implements Runnable {
    private static final int LARGEST_PORT = 65_535;

    private final Launcher launcher;

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(
            names = "--port",
            defaultValue = "4280",
            paramLabel = "N",
            description = "Port, 0 for any free one. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--host",
            defaultValue = "127.0.0.1",
            paramLabel = "NAME",
            description = "Address to listen on: ${DEFAULT-VALUE} is this computer alone; on any other everybody has to"
                    + " log in, and a coach has to be added first (loopwright coach add).")
    private String host = "127.0.0.1";

    @Option(
            names = "--address",
            paramLabel = "URL",
            description = "Where a reverse proxy offers the bench, e.g. https://bench.example; everybody has to log in"
                    + " (docs/serving.md).")
    private @Nullable URI address;

    @Option(names = "--demo", description = "Starts with the invented course and player, in a folder of their own.")
    private boolean demo;

    @Spec
    private @Nullable CommandSpec spec;

    /** Starts the bench on a store and a port. */
    public interface Launcher {
        /**
         * The port it answers on; the store and the server close with the program.
         *
         * @param host what it listens on
         * @param address where a reverse proxy offers it, if one does
         */
        int launch(StoreOptions.Where where, boolean demo, String host, Optional<URI> address, int port);
    }

    public ServeVerb(Launcher launcher) {
        this.launcher = launcher;
    }

    @Override
    public void run() {
        if (port < 0 || port > LARGEST_PORT) {
            throw new UserFault("--port " + port + " is no port; 0 to 65535 is accepted.");
        }
        Optional<URI> proxy = Optional.ofNullable(address);
        proxy.ifPresent(ServeVerb::check);
        String listen = isLoopback(host) ? "127.0.0.1" : host;
        StoreOptions.Where place = demo ? where.whereOr(Path.of(demoFolder())) : where.where();
        int used = launcher.launch(place, demo, listen, proxy, port);
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println("The bench is at " + proxy.map(URI::toString).orElse("http://" + listen + ":" + used + "/")
                + " (Ctrl-C ends it).");
        if (proxy.isEmpty() && !isLoopback(host)) {
            out.println(
                    "Passwords travel unencrypted to it; put a proxy with TLS before it (docs/serving.md) where others"
                            + " share the network.");
        }
        out.flush();
        waitForever();
    }

    private static void check(URI address) {
        boolean usable = ("https".equals(address.getScheme()) || "http".equals(address.getScheme()))
                && address.getAuthority() != null
                && (address.getPath() == null || address.getPath().matches("/?"));
        if (!usable) {
            throw new UserFault("--address " + address + " is not the address of a site of its own; write it like"
                    + " https://bench.example.");
        }
    }

    private static String demoFolder() {
        return System.getProperty("java.io.tmpdir") + "/loopwright-demo-" + System.getProperty("user.name");
    }

    private static boolean isLoopback(String name) {
        try {
            return InetAddress.getByName(name).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw new UserFault(
                    "--host " + name + " is not known; give an address of this computer, such as 127.0.0.1 or 0.0.0.0.",
                    e);
        }
    }

    private static void waitForever() {
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
