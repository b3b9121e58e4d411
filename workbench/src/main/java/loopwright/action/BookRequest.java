package loopwright.action;

/**
 * What a book is asked for.
 *
 * @param plan the round; it has one day
 * @param day that day in words, for the cover
 * @param stateOfPlay true to add the slip with the chances on the last tees; the plan is then solved for the target
 */
public record BookRequest(PlanRequest plan, String day, LengthUnit unit, boolean stateOfPlay) {
    public BookRequest {
        if (plan.days().size() != 1) {
            throw new UserFault("A book is for one day; give one wind and print another book for another day.");
        }
    }
}
