package loopwright.web;

import java.net.URI;
import java.util.Optional;

/**
 * How the bench is reached.
 *
 * @param host the address it listens on
 * @param address where a reverse proxy offers it ("https://bench.example"), if one does
 */
public record Doors(String host, Optional<URI> address) {
    /** For the person at this computer alone. */
    public static final Doors HERE = new Doors("127.0.0.1", Optional.empty());

    /** True if whoever comes has to log in: from elsewhere, or through a proxy, which comes from here. */
    public boolean locked() {
        return address.isPresent() || !host.equals(HERE.host());
    }

    boolean encrypted() {
        return address.filter(a -> "https".equals(a.getScheme())).isPresent();
    }
}
