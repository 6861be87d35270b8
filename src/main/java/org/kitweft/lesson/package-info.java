/**
 * Lessons: stickings, voicings, tempo steps and remarks for one week, and the files they are kept
 * in. Start at {@link org.kitweft.lesson.LessonFile}.
 */
@NullMarked
package org.kitweft.lesson;

import org.jspecify.annotations.NullMarked;
