package loopwright.cli;

import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright serve}: the bench in the browser, on this computer only. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the bench to the browser of this computer; Ctrl-C ends it.")
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
            description = "Only this computer itself is accepted: ${DEFAULT-VALUE}.")
    private String host = "127.0.0.1";

    @Option(names = "--demo", description = "Starts with the invented course and player, in a folder of their own.")
    private boolean demo;

    @Spec
    private @Nullable CommandSpec spec;

    /** Starts the bench on a store and a port. */
    public interface Launcher {
        /** The port it answers on; the store and the server close with the program. */
        int launch(StoreOptions.Where where, boolean demo, int port);
    }

    public ServeVerb(Launcher launcher) {
        this.launcher = launcher;
    }

    @Override
    public void run() {
        if (port < 0 || port > LARGEST_PORT) {
            throw new UserFault("--port " + port + " is no port; 0 to 65535 is accepted.");
        }
        if (!isLoopback(host)) {
            throw new UserFault("--host " + host
                    + " is not this computer alone; the bench has no login yet and answers only on 127.0.0.1.");
        }
        int used = launcher.launch(demo ? where.whereOr(Path.of(demoFolder())) : where.where(), demo, port);
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println("The bench is at http://127.0.0.1:" + used + "/ (Ctrl-C ends it).");
        out.flush();
        waitForever();
    }

    private static String demoFolder() {
        return System.getProperty("java.io.tmpdir") + "/loopwright-demo-" + System.getProperty("user.name");
    }

    private static boolean isLoopback(String name) {
        try {
            return InetAddress.getByName(name).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw new UserFault("--host " + name + " is not known; the bench answers only on 127.0.0.1.", e);
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
