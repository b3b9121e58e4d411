-- Images laid under a course, PNGs, one after the other by number, and where their corners lie, degrees; at most one is shown.
CREATE TABLE kept_image (
    course TEXT NOT NULL REFERENCES document (id),
    number INTEGER NOT NULL,
    shown INTEGER NOT NULL,
    name TEXT NOT NULL,
    upper_left_latitude DOUBLE PRECISION NOT NULL,
    upper_left_longitude DOUBLE PRECISION NOT NULL,
    upper_right_latitude DOUBLE PRECISION NOT NULL,
    upper_right_longitude DOUBLE PRECISION NOT NULL,
    lower_left_latitude DOUBLE PRECISION NOT NULL,
    lower_left_longitude DOUBLE PRECISION NOT NULL,
    added BIGINT NOT NULL,
    -- known to PostgreSQL; the embedded database keeps bytes under any name of a type
    png BYTEA NOT NULL,
    PRIMARY KEY (course, number)
);
INSERT INTO kept_image
SELECT course, 1, 1, name, upper_left_latitude, upper_left_longitude, upper_right_latitude, upper_right_longitude,
    lower_left_latitude, lower_left_longitude, added, png
FROM course_image;
DROP TABLE course_image;
