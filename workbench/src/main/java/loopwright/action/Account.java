package loopwright.action;

import java.time.Instant;

/** Somebody who may log in to the bench. {@code name} is what he types; upper and lower case are the same. */
public record Account(String id, String name, Role role, Instant made) {
    /** What a person may do; see {@link GuardedStore} and the table of rights of the pages. */
    public enum Role {
        /** Everything, the accounts of others too. */
        OWNER,
        /** Players of his own and those shared with him; courses are common to all coaches. */
        COACH,
        /** His own data. */
        PLAYER,
        /** The data of the junior he is guardian of. */
        GUARDIAN;

        public boolean isCoach() {
            return this == OWNER || this == COACH;
        }
    }
}
