package loopwright.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Function;
import loopwright.action.AccessBook;
import loopwright.action.Account;
import loopwright.action.Accounts;
import loopwright.action.BenchStore;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verbs under {@code loopwright coach}. Passwords are typed, or the first line of the input; never arguments. */
public final class CoachVerbs {
    private final Function<StoreOptions.Where, BenchStore> open;
    private final Function<AccessBook, Accounts> accounts;
    private final Reader keyboard;

    public CoachVerbs(
            Function<StoreOptions.Where, BenchStore> open, Function<AccessBook, Accounts> accounts, Reader keyboard) {
        this.open = open;
        this.accounts = accounts;
        this.keyboard = keyboard;
    }

    /** What all of them need: the store. */
    abstract class Verb implements Runnable {
        @Mixin
        private StoreOptions where = new StoreOptions();

        @Spec
        private @Nullable CommandSpec spec;

        void with(BiConsumer<BenchStore, PrintWriter> work) {
            try (BenchStore store = open.apply(where.where())) {
                work.accept(store, Objects.requireNonNull(spec).commandLine().getOut());
            }
        }

        @SuppressWarnings("SystemConsoleNull") // there is none where the input is no terminal, up to Java 21
        String password(PrintWriter out) {
            Console console = System.console();
            if (console != null) {
                return new String(console.readPassword("Password: "));
            }
            out.println("Password (first line of the input):");
            out.flush();
            try {
                String line = new BufferedReader(keyboard).readLine();
                if (line != null) {
                    return line;
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            throw new UserFault("No password was typed; type it, or give it as the first line of the input.");
        }
    }

    /** Adds a coach. */
    @Command(
            name = "add",
            mixinStandardHelpOptions = true,
            description = "Adds a coach; the first one owns the bench. The password is asked for.")
    public final class Add extends Verb {
        @Parameters(paramLabel = "NAME", description = "What the coach types to log in.")
        private String name = "";

        @Override
        public void run() {
            with((store, out) -> {
                Account account = accounts.apply(store.access()).addCoach(name, password(out));
                out.println(account.name() + " may log in now as "
                        + (account.role() == Account.Role.OWNER ? "the owner of the bench." : "a coach."));
            });
        }
    }

    /** Sets a new password. */
    @Command(name = "password", mixinStandardHelpOptions = true, description = "Sets a new password of an account.")
    public final class Password extends Verb {
        @Parameters(paramLabel = "NAME", description = "The account.")
        private String name = "";

        @Override
        public void run() {
            with((store, out) -> {
                Accounts all = accounts.apply(store.access());
                Account account = all.getByName(name);
                all.setPassword(account, password(out));
                out.println("The password of " + account.name() + " is changed.");
            });
        }
    }

    /** Removes an account. */
    @Command(name = "remove", mixinStandardHelpOptions = true, description = "Takes an account out; players stay.")
    public final class Remove extends Verb {
        @Parameters(paramLabel = "NAME", description = "The account.")
        private String name = "";

        @Override
        public void run() {
            with((store, out) -> {
                Accounts all = accounts.apply(store.access());
                Account account = all.getByName(name);
                all.remove(account);
                out.println(account.name() + " may not log in any more.");
            });
        }
    }

    /** Lists the accounts. */
    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists who may log in.")
    public final class ListAll extends Verb {
        @Override
        public void run() {
            with((store, out) -> {
                var all = store.access().listAccounts();
                all.forEach(
                        a -> out.println(a.name() + " (" + a.role().name().toLowerCase(java.util.Locale.ROOT) + ")"));
                if (all.isEmpty()) {
                    out.println("Nobody may log in yet; \"loopwright coach add NAME\" adds the owner.");
                }
            });
        }
    }
}
