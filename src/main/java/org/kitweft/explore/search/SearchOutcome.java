package org.kitweft.explore.search;

/** What a search backwards comes to: ways to play the groove, or why there is none. */
public sealed interface SearchOutcome permits Found, NoneCan {}
