// When which key sounds, as musicxml-io 0.9.6 reads a score: it parses, plays the repeats and says
// where each note stands; here only ties and the choice of the key are decided.
// The library names its objects at random; a browser would bring the dice.
let dice = 0;
globalThis.crypto = { getRandomValues: (bytes) => bytes.forEach((_, i) => (bytes[i] = dice++)) };

function onsets(text) {
  const score = musicxml.parse(text);
  const part = score.parts[0];
  const keys = new Map();
  for (const entry of score.partList) {
    for (const midi of entry.midiInstruments ?? []) {
      // MusicXML 4.0, midi-unpitched: counts from 1.
      keys.set(midi.id, midi.unpitched - 1);
    }
  }
  const divisions = part.measures[0].attributes.divisions;
  const sequence = musicxml.generatePlaybackSequence(score);
  const bars = musicxml
    .generatePlaybackTimeline(score, { ticksPerQuarterNote: divisions })
    .breakpoints.filter((point) => point.beatInMeasure === 0);
  const found = [];
  sequence.forEach((played, index) => {
    const start = Math.round(bars[index].quarterPos * divisions);
    for (const note of musicxml.withAbsolutePositions(part.measures[played.measureIndex])) {
      const ties = note.ties ?? (note.tie ? [note.tie] : []);
      if (note.rest || note.grace || ties.some((tie) => tie.type === 'stop')) {
        continue;
      }
      // MIDI 1.0: key 60 is middle C, which MusicXML calls octave 4.
      const key = note.pitch
        ? musicxml.pitchToSemitone(note.pitch) + 12
        : keys.get(note.instrument);
      found.push(`${start + note.absolutePosition}/${divisions} ${key}`);
    }
  });
  return found.join('\n');
}
