package loopwright.adapter.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import loopwright.action.AccessBook;
import loopwright.action.Account;
import loopwright.action.UserFault;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Accounts, grants, invitations and the log of changes in the tables of the store. */
final class SqlAccess implements AccessBook {
    private static final String ACCOUNT = "SELECT id, name, role, made, secret FROM account";
    /** Older changes are forgotten. */
    private static final int MOST_CHANGES = 20_000;

    private final Jdbi jdbi;

    SqlAccess(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** Forgets who might see a player that is erased. */
    static void erase(Handle h, String player) {
        h.execute("DELETE FROM player_grant WHERE player = ?", player);
        h.execute("DELETE FROM invitation WHERE player = ?", player);
    }

    private static Account account(ResultSet r) throws SQLException {
        return new Account(
                r.getString(1),
                r.getString(2),
                Account.Role.valueOf(r.getString(3)),
                Instant.ofEpochMilli(r.getLong(4)));
    }

    @Override
    public List<Account> listAccounts() {
        return jdbi.withHandle(h -> h.createQuery(ACCOUNT + " ORDER BY login")
                .map((r, c) -> account(r))
                .list());
    }

    @Override
    public Optional<Account> find(String id) {
        return jdbi.withHandle(h -> h.createQuery(ACCOUNT + " WHERE id = ?")
                .bind(0, id)
                .map((r, c) -> account(r))
                .findOne());
    }

    @Override
    public Optional<Secret> findSecret(String name) {
        return jdbi.withHandle(h -> h.createQuery(ACCOUNT + " WHERE login = ?")
                .bind(0, login(name))
                .map((r, c) -> new Secret(account(r), r.getString(5)))
                .findOne());
    }

    private static String login(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    @Override
    public Account add(String name, Account.Role role, String hash) {
        Account account = new Account(Ids.fresh(), name, role, Ids.now());
        int added = jdbi.inTransaction(h -> h.execute(
                "INSERT INTO account VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (login) DO NOTHING",
                account.id(),
                name,
                login(name),
                role.name(),
                hash,
                account.made().toEpochMilli()));
        if (added == 0) {
            throw new UserFault("There is an account \"" + name + "\" already; choose another name.");
        }
        return account;
    }

    @Override
    public void setHash(String account, String hash) {
        jdbi.useTransaction(h -> h.execute("UPDATE account SET secret = ? WHERE id = ?", hash, account));
    }

    @Override
    public void remove(String account) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM player_grant WHERE account = ?", account);
            h.execute("DELETE FROM account WHERE id = ?", account);
        });
    }

    @Override
    public Set<String> listPlayers(String account) {
        return jdbi.withHandle(h -> new HashSet<>(h.createQuery("SELECT player FROM player_grant WHERE account = ?")
                .bind(0, account)
                .mapTo(String.class)
                .list()));
    }

    @Override
    public void grant(String account, String player) {
        jdbi.useTransaction(
                h -> h.execute("INSERT INTO player_grant VALUES (?, ?) ON CONFLICT DO NOTHING", account, player));
    }

    @Override
    public void revoke(String account, String player) {
        jdbi.useTransaction(
                h -> h.execute("DELETE FROM player_grant WHERE account = ? AND player = ?", account, player));
    }

    @Override
    public void addInvitation(String tokenHash, Invitation i) {
        jdbi.useTransaction(h -> h.execute(
                "INSERT INTO invitation VALUES (?, ?, ?, ?)",
                tokenHash,
                i.role().name(),
                i.player(),
                i.expires().toEpochMilli()));
    }

    @Override
    public Optional<Invitation> findInvitation(String tokenHash) {
        return jdbi.withHandle(h -> h.createQuery("SELECT role, player, expires FROM invitation WHERE token = ?")
                .bind(0, tokenHash)
                .map((r, c) -> new Invitation(
                        Account.Role.valueOf(r.getString(1)), r.getString(2), Instant.ofEpochMilli(r.getLong(3))))
                .findOne());
    }

    @Override
    public boolean takeInvitation(String tokenHash) {
        return jdbi.inTransaction(h -> h.execute("DELETE FROM invitation WHERE token = ?", tokenHash)) == 1;
    }

    @Override
    public void log(Change c) {
        jdbi.useTransaction(h -> {
            h.execute(
                    "INSERT INTO change_log VALUES (?, ?, ?, ?, ?)",
                    c.at().toEpochMilli(),
                    c.who(),
                    c.what(),
                    c.subject(),
                    c.outcome());
            h.execute(
                    "DELETE FROM change_log WHERE at < (SELECT MIN(at) FROM (SELECT at FROM change_log"
                            + " ORDER BY at DESC LIMIT ?) kept)",
                    MOST_CHANGES);
        });
    }

    @Override
    public List<Change> listChanges(int most) {
        return jdbi.withHandle(h -> h.createQuery(
                        "SELECT at, who, what, subject, outcome FROM change_log ORDER BY at DESC LIMIT ?")
                .bind(0, most)
                .map((r, c) -> new Change(
                        Instant.ofEpochMilli(r.getLong(1)),
                        r.getString(2),
                        r.getString(3),
                        r.getString(4),
                        r.getInt(5)))
                .list());
    }
}
