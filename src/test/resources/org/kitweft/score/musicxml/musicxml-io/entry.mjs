export { parse, pitchToSemitone, generatePlaybackSequence, generatePlaybackTimeline, withAbsolutePositions } from 'musicxml-io/browser';
