package loopwright.web;

import io.javalin.config.RoutesConfig;

/** A place of the bench: a page with everything that belongs to it. */
public interface Place {
    /** Adds the addresses of the place. */
    void routes(RoutesConfig routes);
}
