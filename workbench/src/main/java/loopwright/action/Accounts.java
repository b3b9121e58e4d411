package loopwright.action;

import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.AccessBook.Invitation;
import loopwright.action.AccessBook.Secret;
import loopwright.action.Account.Role;
import org.jspecify.annotations.Nullable;

/** Makes accounts, checks passwords, invites. */
public final class Accounts {
    /** How long an invitation is worth something. */
    public static final Duration INVITED = Duration.ofDays(7);

    private static final int SHORTEST_PASSWORD = 10;
    private static final int LONGEST_PASSWORD = 200;
    private static final int LONGEST_NAME = 80;

    private final AccessBook book;
    private final Passwords passwords;
    private final Clock clock;
    /** Checked where there is no such account, so that the answer takes as long as for a wrong password. */
    private @Nullable String nobody;

    public Accounts(AccessBook book, Passwords passwords, Clock clock) {
        this.book = book;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** True once somebody can log in and make accounts for others. */
    public static boolean hasCoach(AccessBook book) {
        return book.listAccounts().stream().anyMatch(a -> a.role().isCoach());
    }

    /** Adds a coach; the first is the owner of the bench. */
    public Account addCoach(String name, String password) {
        return add(name, hasCoach(book) ? Role.COACH : Role.OWNER, password);
    }

    private Account add(String name, Role role, String password) {
        String clean = name.strip();
        if (clean.isEmpty() || clean.length() > LONGEST_NAME || clean.chars().anyMatch(Character::isISOControl)) {
            throw new UserFault("An account needs a name of 1 to " + LONGEST_NAME + " letters.");
        }
        requireGood(clean, password);
        return book.add(clean, role, passwords.hash(password));
    }

    private static void requireGood(String name, String password) {
        if (password.length() < SHORTEST_PASSWORD || password.length() > LONGEST_PASSWORD) {
            throw new UserFault("A password has " + SHORTEST_PASSWORD + " to " + LONGEST_PASSWORD
                    + " letters; a few plain words in a row do well.");
        }
        if (password.equalsIgnoreCase(name)) {
            throw new UserFault("The password is the name; choose another.");
        }
    }

    /** The account of a name and password, if both are right. */
    public Optional<Account> check(String name, String password) {
        Optional<Secret> secret = book.findSecret(name.strip());
        boolean right = password.length() <= LONGEST_PASSWORD
                && passwords.matches(password, secret.map(Secret::hash).orElseGet(this::nobody));
        return right ? secret.map(Secret::account) : Optional.empty();
    }

    private synchronized String nobody() {
        if (nobody == null) {
            nobody = passwords.hash(Tokens.fresh());
        }
        return nobody;
    }

    public void setPassword(Account account, String password) {
        requireGood(account.name(), password);
        book.setHash(account.id(), passwords.hash(password));
    }

    public Account getByName(String name) {
        return book.listAccounts().stream()
                .filter(a ->
                        a.name().toLowerCase(Locale.ROOT).equals(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new UserFault(
                        "There is no account \"" + name + "\"; \"loopwright coach list\" shows those there are."));
    }

    /** Takes an account out; the last owner stays, or nobody could let others in. */
    public void remove(Account account) {
        boolean lastOwner = account.role() == Role.OWNER
                && book.listAccounts().stream()
                                .filter(a -> a.role() == Role.OWNER)
                                .count()
                        == 1;
        if (lastOwner) {
            throw new UserFault(account.name() + " is the only owner of this bench and stays.");
        }
        book.remove(account.id());
    }

    /** Invites somebody; returns the token, which is kept nowhere. {@code player} is empty for a coach. */
    public String invite(Role role, String player) {
        if (role == Role.OWNER || role.isCoach() != player.isEmpty()) {
            throw new UserFault("A player or guardian is invited to one player, a coach to none.");
        }
        String token = Tokens.fresh();
        book.addInvitation(
                Tokens.hash(token), new Invitation(role, player, clock.instant().plus(INVITED)));
        return token;
    }

    /** The invitation of a token while it is worth something. */
    public Optional<Invitation> findInvitation(String token) {
        return book.findInvitation(Tokens.hash(token))
                .filter(i -> clock.instant().isBefore(i.expires()));
    }

    /** Makes the account somebody was invited to; an invitation is good once. */
    public Account join(String token, String name, String password) {
        Invitation invitation = findInvitation(token)
                .orElseThrow(() -> new UserFault(
                        "This invitation was used, or is older than " + INVITED.toDays() + " days; ask for another."));
        requireGood(name.strip(), password);
        if (book.findSecret(name.strip()).isPresent()) {
            throw new UserFault("The name \"" + name.strip() + "\" is taken; choose another.");
        }
        if (!book.takeInvitation(Tokens.hash(token))) {
            throw new UserFault("This invitation was used a moment ago; ask for another.");
        }
        Account account = add(name, invitation.role(), password);
        if (!invitation.player().isEmpty()) {
            book.grant(account.id(), invitation.player());
        }
        return account;
    }
}
