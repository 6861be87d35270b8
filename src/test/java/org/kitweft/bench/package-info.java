/**
 * Speed, measured with JMH as a ratio beside a rival in the same run. Not part of the tests.
 *
 * <p>Run one with {@code mvn -q test-compile exec:exec -Dbench=WeavingBenchmark}.
 */
package org.kitweft.bench;
