package loopwright.action;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Port: who may log in, whose players he sees, who was invited, and what was changed by whom. */
public interface AccessBook {
    /** All accounts, by name. */
    List<Account> listAccounts();

    Optional<Account> find(String id);

    /** An account with the hash of its password, by the name that is typed. */
    Optional<Secret> findSecret(String name);

    /** An account and the hash of its password. */
    record Secret(Account account, String hash) {}

    /** Keeps a new account; a {@link UserFault} if the name is taken. */
    Account add(String name, Account.Role role, String hash);

    void setHash(String account, String hash);

    /** Removes an account with its grants; players stay. */
    void remove(String account);

    /** Players an account may see. */
    Set<String> listPlayers(String account);

    void grant(String account, String player);

    void revoke(String account, String player);

    /** Keeps an invitation under the hash of its token. */
    void addInvitation(String tokenHash, Invitation invitation);

    Optional<Invitation> findInvitation(String tokenHash);

    /** Takes an invitation out; true for the one caller who took it. */
    boolean takeInvitation(String tokenHash);

    /**
     * An invitation to make an account.
     *
     * @param player whom the account will see; empty for a coach
     * @param expires from when on it is worth nothing
     */
    record Invitation(Account.Role role, String player, Instant expires) {}

    /** Notes a change. */
    void log(Change change);

    /** The last changes, newest first. */
    List<Change> listChanges(int most);

    /**
     * A change that was made.
     *
     * @param who name of the account, or "this computer"
     * @param what the address it was sent to
     * @param subject id of the player or course it was about, or empty
     * @param outcome the status of the answer
     */
    record Change(Instant at, String who, String what, String subject, int outcome) {}
}
