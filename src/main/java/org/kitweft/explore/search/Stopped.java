package org.kitweft.explore.search;

/** The search was stopped before it knew. */
public record Stopped() implements SearchOutcome {}
