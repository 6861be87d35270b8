/**
 * The command line: one class a command, options that several share in one class each, and the
 * texts and pictures that commands answer with. Start at {@link org.kitweft.cli.Cli}.
 */
@NullMarked
package org.kitweft.cli;

import org.jspecify.annotations.NullMarked;
