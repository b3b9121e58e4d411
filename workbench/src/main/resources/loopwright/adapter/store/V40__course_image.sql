-- The image that lies under a course, a PNG, and where its corners lie, degrees.
CREATE TABLE course_image (
    course TEXT PRIMARY KEY REFERENCES document (id),
    name TEXT NOT NULL,
    upper_left_latitude DOUBLE PRECISION NOT NULL,
    upper_left_longitude DOUBLE PRECISION NOT NULL,
    upper_right_latitude DOUBLE PRECISION NOT NULL,
    upper_right_longitude DOUBLE PRECISION NOT NULL,
    lower_left_latitude DOUBLE PRECISION NOT NULL,
    lower_left_longitude DOUBLE PRECISION NOT NULL,
    added BIGINT NOT NULL,
    -- known to PostgreSQL; the embedded database keeps bytes under any name of a type
    png BYTEA NOT NULL
);
