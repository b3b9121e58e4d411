package loopwright.action;

/**
 * A row of a table that cannot be used.
 *
 * @param line in the file, from 1
 * @param column in the row, from 1; 0 where the row as a whole is meant
 * @param name of the column as the program calls it; empty where the row as a whole is meant
 * @param value as written
 * @param accepted what would be accepted, as the end of a sentence
 */
public record RowProblem(long line, int column, String name, String value, String accepted) {
    private static final int SHOWN = 40;

    /** The same, its column called as the file calls it. */
    public RowProblem named(String written) {
        return new RowProblem(line, column, written, value, accepted);
    }

    /** The place and the mend in one sentence, without the file. */
    public String sentence() {
        String shown = value.length() <= SHOWN ? value : value.substring(0, SHOWN) + "...";
        String where = column == 0 ? "line " + line : "line " + line + ", column " + column + " (" + name + ")";
        return where + ": \"" + shown + "\" is not " + accepted + ".";
    }
}
