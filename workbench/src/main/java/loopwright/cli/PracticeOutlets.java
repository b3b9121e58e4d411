package loopwright.cli;

import loopwright.action.CalendarFile;
import loopwright.action.LearningFiles;
import loopwright.action.PracticePictures;
import loopwright.action.ResultFile;

/** Where weeks and plans of practice are written, and learning curves read. */
public record PracticeOutlets(
        LearningFiles learning, PracticePictures pictures, CalendarFile calendars, ResultFile results) {}
