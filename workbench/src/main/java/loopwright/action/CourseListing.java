package loopwright.action;

/**
 * One course of a map file.
 *
 * @param number counts from 1 in the order of the file
 * @param element the border's id in the file, or where the course was found without one
 * @param holes how many holes can be read, numbered or not
 * @param unsurveyed how many of them nobody has looked at
 */
public record CourseListing(int number, String name, String element, int holes, int unsurveyed) {}
