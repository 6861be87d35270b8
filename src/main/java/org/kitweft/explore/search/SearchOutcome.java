package org.kitweft.explore.search;

/** What a search backwards comes to: ways to play the groove, why there is none, or nothing. */
public sealed interface SearchOutcome permits Found, NoneCan, Stopped {}
