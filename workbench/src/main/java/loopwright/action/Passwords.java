package loopwright.action;

/** Port: one-way hashes of passwords, slow on purpose. */
public interface Passwords {
    String hash(String password);

    boolean matches(String password, String hash);
}
