var musicxml = (() => {
  var __defProp = Object.defineProperty;
  var __getOwnPropDesc = Object.getOwnPropertyDescriptor;
  var __getOwnPropNames = Object.getOwnPropertyNames;
  var __hasOwnProp = Object.prototype.hasOwnProperty;
  var __export = (target, all) => {
    for (var name in all)
      __defProp(target, name, { get: all[name], enumerable: true });
  };
  var __copyProps = (to, from, except, desc) => {
    if (from && typeof from === "object" || typeof from === "function") {
      for (let key of __getOwnPropNames(from))
        if (!__hasOwnProp.call(to, key) && key !== except)
          __defProp(to, key, { get: () => from[key], enumerable: !(desc = __getOwnPropDesc(from, key)) || desc.enumerable });
    }
    return to;
  };
  var __toCommonJS = (mod) => __copyProps(__defProp({}, "__esModule", { value: true }), mod);

  // entry.mjs
  var entry_exports = {};
  __export(entry_exports, {
    generatePlaybackSequence: () => generatePlaybackSequence,
    generatePlaybackTimeline: () => generatePlaybackTimeline,
    parse: () => parse,
    pitchToSemitone: () => pitchToSemitone,
    withAbsolutePositions: () => withAbsolutePositions
  });

  // node_modules/musicxml-io/dist/chunk-UMEH3ENQ.mjs
  var STEP_SEMITONES = {
    "C": 0,
    "D": 2,
    "E": 4,
    "F": 5,
    "G": 7,
    "A": 9,
    "B": 11
  };
  function pitchToSemitone(pitch) {
    return pitch.octave * 12 + STEP_SEMITONES[pitch.step] + (pitch.alter ?? 0);
  }
  function createPositionState() {
    return { position: 0, lastNonChordPosition: 0 };
  }
  function updatePositionForEntry(state, entry) {
    const pos = state.position;
    switch (entry.type) {
      case "note": {
        const note = entry;
        if (!note.chord) {
          state.lastNonChordPosition = state.position;
          state.position += note.duration;
        }
        return note.chord ? state.lastNonChordPosition : pos;
      }
      case "backup":
        state.position -= entry.duration;
        state.lastNonChordPosition = state.position;
        return pos;
      case "forward":
        state.position += entry.duration;
        state.lastNonChordPosition = state.position;
        return pos;
      default:
        return pos;
    }
  }
  function parseEndingNumbers(numberStr) {
    const numbers = [];
    const parts = numberStr.split(/[,\s]+/);
    for (const part of parts) {
      if (part.includes("-")) {
        const [start, end] = part.split("-").map((s) => parseInt(s.trim(), 10));
        if (!isNaN(start) && !isNaN(end)) {
          for (let i = start; i <= end; i++) {
            numbers.push(i);
          }
        }
      } else {
        const num = parseInt(part.trim(), 10);
        if (!isNaN(num)) {
          numbers.push(num);
        }
      }
    }
    return numbers.length > 0 ? numbers : [1];
  }
  function parseJumpText(text) {
    const t = text.toLowerCase().replace(/\s+/g, " ").trim();
    if (t.includes("d.c. al coda") || t.includes("da capo al coda")) return "dc_al_coda";
    if (t.includes("d.c. al fine") || t.includes("da capo al fine")) return "dc_al_fine";
    if (t.includes("d.c.") || t.includes("da capo")) return "dc";
    if (t.includes("d.s. al coda") || t.includes("dal segno al coda")) return "ds_al_coda";
    if (t.includes("d.s. al fine") || t.includes("dal segno al fine")) return "ds_al_fine";
    if (t.includes("d.s.") || t.includes("dal segno")) return "ds";
    if (t === "fine") return "fine";
    if (t.includes("to coda") || t.includes("al coda")) return "to_coda";
    if (t === "coda" || t === "𝅌") return "coda";
    if (t === "segno" || t === "𝄋") return "segno";
    return null;
  }
  function getFirstWordsText(entry) {
    for (const dt of entry.directionTypes) {
      if (dt.kind === "words" && dt.text) return dt.text;
    }
    return void 0;
  }
  function hasDirectionKind(entry, kind) {
    return entry.directionTypes.some((dt) => dt.kind === kind);
  }
  function extractPlaybackControls(part) {
    const controls = {
      repeatStarts: [],
      repeatEnds: [],
      voltas: [],
      jumps: [],
      segnoIndex: null,
      codaIndex: null,
      fineIndex: null,
      toCodaIndex: null
    };
    const soundJumps = [];
    for (let measureIndex = 0; measureIndex < part.measures.length; measureIndex++) {
      const measure = part.measures[measureIndex];
      if (measure.barlines) {
        for (const barline of measure.barlines) {
          if (barline.repeat) {
            if (barline.repeat.direction === "forward") {
              controls.repeatStarts.push(measureIndex);
            } else if (barline.repeat.direction === "backward") {
              controls.repeatEnds.push({
                measureIndex,
                times: barline.repeat.times ?? 2
              });
            }
          }
          if (barline.ending) {
            const numbers = parseEndingNumbers(barline.ending.number);
            controls.voltas.push({
              measureIndex,
              numbers,
              type: barline.ending.type
            });
          }
        }
      }
      for (const entry of measure.entries) {
        if (entry.type === "direction") {
          const dir = entry;
          if (hasDirectionKind(dir, "segno") && controls.segnoIndex === null) {
            controls.segnoIndex = measureIndex;
          }
          if (hasDirectionKind(dir, "coda") && controls.codaIndex === null) {
            controls.codaIndex = measureIndex;
          }
          const words = getFirstWordsText(dir);
          if (words) {
            const jt = parseJumpText(words);
            if (jt === "fine") {
              if (controls.fineIndex === null) controls.fineIndex = measureIndex;
            } else if (jt === "to_coda") {
              if (controls.toCodaIndex === null) controls.toCodaIndex = measureIndex;
            } else if (jt === "coda") {
              if (controls.codaIndex === null) controls.codaIndex = measureIndex;
            } else if (jt === "segno") {
              if (controls.segnoIndex === null) controls.segnoIndex = measureIndex;
            } else if (jt) {
              controls.jumps.push({ measureIndex, type: jt });
            }
          }
        } else if (entry.type === "sound") {
          const sound = entry;
          if (sound.segno && controls.segnoIndex === null) controls.segnoIndex = measureIndex;
          if (sound.coda && controls.codaIndex === null) controls.codaIndex = measureIndex;
          if (sound.tocoda && controls.toCodaIndex === null) controls.toCodaIndex = measureIndex;
          if (sound.fine && controls.fineIndex === null) controls.fineIndex = measureIndex;
          if (sound.dacapo) soundJumps.push({ measureIndex, base: "dc" });
          if (sound.dalsegno) soundJumps.push({ measureIndex, base: "ds" });
        }
      }
    }
    for (const sj of soundJumps) {
      if (controls.jumps.some((j) => j.measureIndex === sj.measureIndex)) continue;
      let type;
      if (controls.fineIndex !== null) {
        type = sj.base === "dc" ? "dc_al_fine" : "ds_al_fine";
      } else if (controls.toCodaIndex !== null || controls.codaIndex !== null) {
        type = sj.base === "dc" ? "dc_al_coda" : "ds_al_coda";
      } else {
        type = sj.base;
      }
      controls.jumps.push({ measureIndex: sj.measureIndex, type });
    }
    return controls;
  }
  function buildVoltaRanges(voltas, measureCount) {
    const voltaRanges = /* @__PURE__ */ new Map();
    let currentVoltaStart = null;
    let currentVoltaNumbers = [];
    for (const volta of voltas) {
      if (volta.type === "start") {
        currentVoltaStart = volta.measureIndex;
        currentVoltaNumbers = volta.numbers;
      } else if ((volta.type === "stop" || volta.type === "discontinue") && currentVoltaStart !== null) {
        for (let i = currentVoltaStart; i <= volta.measureIndex; i++) {
          voltaRanges.set(i, currentVoltaNumbers);
        }
        currentVoltaStart = null;
      }
    }
    if (currentVoltaStart !== null) {
      for (let i = currentVoltaStart; i < measureCount; i++) {
        voltaRanges.set(i, currentVoltaNumbers);
      }
    }
    return voltaRanges;
  }
  function generatePlaybackSequence(score, options) {
    const partIndex = options?.partIndex ?? 0;
    const part = score.parts[partIndex];
    if (!part) return [];
    const measureCount = part.measures.length;
    const sequence = [];
    if (measureCount === 0) return sequence;
    const controls = extractPlaybackControls(part);
    if (controls.repeatStarts.length === 0 && controls.repeatEnds.length === 0 && controls.voltas.length === 0 && controls.jumps.length === 0) {
      for (let i = 0; i < measureCount; i++) {
        sequence.push({ measureIndex: i, repeatIteration: 0 });
      }
      return sequence;
    }
    const voltaRanges = buildVoltaRanges(controls.voltas, measureCount);
    const sortedRepeatStarts = [...controls.repeatStarts].sort((a, b) => a - b);
    const sortedRepeatEnds = [...controls.repeatEnds].sort((a, b) => a.measureIndex - b.measureIndex);
    const repeatSections = /* @__PURE__ */ new Map();
    const voltaToRepeatEnd = /* @__PURE__ */ new Map();
    const usedRepeatStarts = /* @__PURE__ */ new Set();
    let lastRepeatEndMeasure = -1;
    for (const repeatEnd of sortedRepeatEnds) {
      let startIndex = null;
      for (const startMeasure of sortedRepeatStarts) {
        if (startMeasure <= repeatEnd.measureIndex && startMeasure > lastRepeatEndMeasure && !usedRepeatStarts.has(startMeasure)) {
          startIndex = startMeasure;
        } else if (startMeasure > repeatEnd.measureIndex) {
          break;
        }
      }
      if (startIndex === null) {
        startIndex = lastRepeatEndMeasure + 1;
      } else {
        usedRepeatStarts.add(startIndex);
      }
      repeatSections.set(repeatEnd.measureIndex, {
        startIndex,
        times: repeatEnd.times
      });
      lastRepeatEndMeasure = repeatEnd.measureIndex;
      voltaRanges.forEach((_iterations, voltaMeasure) => {
        const isInsideRepeat = voltaMeasure >= startIndex && voltaMeasure <= repeatEnd.measureIndex;
        const isImmediatelyAfter = voltaMeasure > repeatEnd.measureIndex && !voltaToRepeatEnd.has(voltaMeasure);
        if (isInsideRepeat) {
          voltaToRepeatEnd.set(voltaMeasure, repeatEnd.measureIndex);
        } else if (isImmediatelyAfter) {
          let belongsToLaterRepeat = false;
          for (const otherEnd of sortedRepeatEnds) {
            if (otherEnd.measureIndex > repeatEnd.measureIndex) {
              const otherSection = repeatSections.get(otherEnd.measureIndex);
              if (otherSection && voltaMeasure >= otherSection.startIndex && voltaMeasure <= otherEnd.measureIndex) {
                belongsToLaterRepeat = true;
                break;
              }
            }
          }
          if (!belongsToLaterRepeat) {
            voltaToRepeatEnd.set(voltaMeasure, repeatEnd.measureIndex);
          }
        }
      });
    }
    let currentMeasure = 0;
    const repeatCounts = /* @__PURE__ */ new Map();
    let lastRepeatEndIndex = null;
    let lastRepeatIteration = 0;
    let inRepeatJump = false;
    let stopAtFine = false;
    let jumpToCoda = false;
    const maxIterations = measureCount * 10 + 10;
    let iterations = 0;
    while (currentMeasure < measureCount && iterations < maxIterations) {
      iterations++;
      const voltaIterations = voltaRanges.get(currentMeasure);
      let repeatIteration = 0;
      let inRepeatSection = false;
      let currentRepeatEndIndex = null;
      for (const [endIndex, section] of repeatSections) {
        if (currentMeasure >= section.startIndex && currentMeasure <= endIndex) {
          inRepeatSection = true;
          currentRepeatEndIndex = endIndex;
          repeatIteration = repeatCounts.get(endIndex) || 1;
          break;
        }
      }
      if (inRepeatSection && currentRepeatEndIndex !== null) {
        lastRepeatEndIndex = currentRepeatEndIndex;
        lastRepeatIteration = repeatIteration;
      }
      if (voltaIterations) {
        let effectiveIteration = repeatIteration;
        if (!inRepeatSection) {
          const associatedRepeatEnd = voltaToRepeatEnd.get(currentMeasure);
          if (associatedRepeatEnd !== void 0) {
            effectiveIteration = repeatCounts.get(associatedRepeatEnd) || 1;
          } else if (lastRepeatEndIndex !== null) {
            effectiveIteration = lastRepeatIteration;
          }
        }
        if (!voltaIterations.includes(effectiveIteration)) {
          currentMeasure++;
          continue;
        }
      }
      sequence.push({
        measureIndex: currentMeasure,
        repeatIteration: inRepeatSection ? repeatIteration : 0
      });
      if (stopAtFine && controls.fineIndex === currentMeasure) {
        break;
      }
      if (jumpToCoda && controls.toCodaIndex === currentMeasure && controls.codaIndex !== null) {
        currentMeasure = controls.codaIndex;
        jumpToCoda = false;
        continue;
      }
      const repeatSection = repeatSections.get(currentMeasure);
      if (repeatSection) {
        const currentCount = repeatCounts.get(currentMeasure) || 1;
        if (currentCount < repeatSection.times) {
          repeatCounts.set(currentMeasure, currentCount + 1);
          currentMeasure = repeatSection.startIndex;
          continue;
        }
      }
      if (voltaIterations && !inRepeatSection) {
        const associatedRepeatEnd = voltaToRepeatEnd.get(currentMeasure);
        if (associatedRepeatEnd !== void 0) {
          const repeatSectionForVolta = repeatSections.get(associatedRepeatEnd);
          if (repeatSectionForVolta) {
            const currentCount = repeatCounts.get(associatedRepeatEnd) || 1;
            if (currentCount < repeatSectionForVolta.times) {
              repeatCounts.set(associatedRepeatEnd, currentCount + 1);
              currentMeasure = repeatSectionForVolta.startIndex;
              continue;
            }
          }
        }
      }
      const jumpAtMeasure = controls.jumps.find((j) => j.measureIndex === currentMeasure);
      if (jumpAtMeasure && !inRepeatJump) {
        inRepeatJump = true;
        switch (jumpAtMeasure.type) {
          case "dc":
            currentMeasure = 0;
            continue;
          case "dc_al_fine":
            currentMeasure = 0;
            stopAtFine = true;
            continue;
          case "dc_al_coda":
            currentMeasure = 0;
            jumpToCoda = true;
            continue;
          case "ds":
            if (controls.segnoIndex !== null) {
              currentMeasure = controls.segnoIndex;
              continue;
            }
            break;
          case "ds_al_fine":
            if (controls.segnoIndex !== null) {
              currentMeasure = controls.segnoIndex;
              stopAtFine = true;
              continue;
            }
            break;
          case "ds_al_coda":
            if (controls.segnoIndex !== null) {
              currentMeasure = controls.segnoIndex;
              jumpToCoda = true;
              continue;
            }
            break;
        }
      }
      currentMeasure++;
    }
    return sequence;
  }
  var DEFAULT_FERMATA_HOLD = 1.75;
  var DEFAULT_CAESURA_SECONDS = 0.4;
  var DEFAULT_BREATH_SECONDS = 0.25;
  var DEFAULT_RAMP_STEPS = 12;
  function metronomeBpm(perMinute) {
    if (perMinute === void 0) return null;
    const bpm = typeof perMinute === "number" ? perMinute : parseFloat(perMinute);
    return isNaN(bpm) ? null : bpm;
  }
  function measureMaxPosition(measure) {
    let position = 0;
    let max = 0;
    for (const entry of measure.entries) {
      if (entry.type === "note") {
        if (!entry.chord && !entry.grace) {
          position += entry.duration;
          if (position > max) max = position;
        }
      } else if (entry.type === "backup") {
        position -= entry.duration;
      } else if (entry.type === "forward") {
        position += entry.duration;
        if (position > max) max = position;
      }
    }
    return max;
  }
  function findTimeSignature(part, measureNumber) {
    const targetMeasure = parseInt(String(measureNumber), 10);
    let time;
    for (const measure of part.measures) {
      const mNum = parseInt(measure.number, 10);
      if (!isNaN(targetMeasure) && !isNaN(mNum) && mNum > targetMeasure) break;
      if (measure.attributes?.time) {
        time = {
          beats: parseInt(measure.attributes.time.beats, 10) || 4,
          beatType: measure.attributes.time.beatType
        };
      }
    }
    return time;
  }
  function measureEndTick(measure, part, divisions, measureStartTick, maxPosition, ticksPerQuarterNote) {
    const actualTicks = Math.round(maxPosition * ticksPerQuarterNote / divisions);
    if (actualTicks > 0) {
      return measureStartTick + actualTicks;
    }
    if (!measure.implicit) {
      const timeAttrs = findTimeSignature(part, measure.number);
      if (timeAttrs) {
        const measureDuration = timeAttrs.beats / timeAttrs.beatType * 4 * divisions;
        const calculatedTicks = Math.round(measureDuration * ticksPerQuarterNote / divisions);
        return measureStartTick + calculatedTicks;
      }
    }
    return measureStartTick;
  }
  function hasFermata(note) {
    return note.notations?.some((n) => n.type === "fermata") ?? false;
  }
  function pauseArticulation(note) {
    if (!note.notations) return null;
    for (const n of note.notations) {
      if (n.type === "articulation") {
        if (n.articulation === "caesura") return "caesura";
        if (n.articulation === "breath-mark") return "breath";
      }
    }
    return null;
  }
  function tempoRampWord(text) {
    const t = text.trim().toLowerCase().replace(/[.\s]+$/, "");
    if (!t) return null;
    if (/^(rit|riten|rall|allarg|slarg|cala|smorz|morend)/.test(t)) return "rit";
    if (/^(accel|string|affret|incalz|pi[uù]\s*mosso)/.test(t)) return "accel";
    return null;
  }
  function buildGridTimeline(score, ticksPerQuarterNote, sequence, options = {}) {
    const rawTempo = [];
    const measures = [];
    const rampMarkers = [];
    const stretches = [];
    if (score.parts.length === 0) {
      return { tempoEvents: [], measures, totalTicks: 0, expressions: [] };
    }
    const fermataHold = options.fermataHoldMultiplier ?? DEFAULT_FERMATA_HOLD;
    const caesuraSeconds = options.caesuraSeconds ?? DEFAULT_CAESURA_SECONDS;
    const breathSeconds = options.breathSeconds ?? DEFAULT_BREATH_SECONDS;
    const rampSteps = Math.max(1, Math.round(options.tempoRampSteps ?? DEFAULT_RAMP_STEPS));
    const defaultTempo = options.defaultTempo ?? 120;
    const part = score.parts[0];
    let divisions = 1;
    let currentTick = 0;
    let prevailingBpm = defaultTempo;
    const pauseFactor = (windowTicks, bpm, pauseSeconds) => {
      const baseSeconds = windowTicks / ticksPerQuarterNote * (60 / bpm);
      if (baseSeconds <= 0) return 1;
      return (baseSeconds + pauseSeconds) / baseSeconds;
    };
    for (const { measureIndex, repeatIteration } of sequence) {
      const measure = part.measures[measureIndex];
      if (!measure) continue;
      if (measure.attributes?.divisions) {
        divisions = measure.attributes.divisions;
      }
      const measureStartTick = currentTick;
      let position = 0;
      let chordBasePosition = 0;
      const tickAt = (pos) => measureStartTick + Math.round(pos * ticksPerQuarterNote / divisions);
      for (const entry of measure.entries) {
        if (entry.type === "direction") {
          for (const dirType of entry.directionTypes) {
            if (dirType.kind === "metronome") {
              const bpm = metronomeBpm(dirType.perMinute);
              if (bpm !== null) {
                rawTempo.push({ tick: tickAt(position), bpm });
                prevailingBpm = bpm;
              }
            } else if (dirType.kind === "words") {
              const kind = tempoRampWord(dirType.text);
              if (kind) rampMarkers.push({ tick: tickAt(position), kind });
            }
          }
          if (entry.sound?.tempo) {
            rawTempo.push({ tick: tickAt(position), bpm: entry.sound.tempo });
            prevailingBpm = entry.sound.tempo;
          }
        } else if (entry.type === "sound") {
          if (entry.tempo) {
            rawTempo.push({ tick: tickAt(position), bpm: entry.tempo });
            prevailingBpm = entry.tempo;
          }
        } else if (entry.type === "note") {
          const notePos = entry.chord ? chordBasePosition : position;
          const noteStartTick = tickAt(notePos);
          const noteEndTick = tickAt(notePos + entry.duration);
          if (noteEndTick > noteStartTick) {
            if (fermataHold !== 1 && hasFermata(entry)) {
              stretches.push({
                startTick: noteStartTick,
                endTick: noteEndTick,
                factor: fermataHold,
                type: "fermata"
              });
            }
            const pause = pauseArticulation(entry);
            if (pause) {
              const seconds = pause === "caesura" ? caesuraSeconds : breathSeconds;
              if (seconds > 0) {
                const window = Math.min(noteEndTick - noteStartTick, ticksPerQuarterNote);
                stretches.push({
                  startTick: noteEndTick - window,
                  endTick: noteEndTick,
                  factor: pauseFactor(window, prevailingBpm, seconds),
                  type: pause
                });
              }
            }
          }
          if (!entry.chord) {
            chordBasePosition = position;
            position += entry.duration;
          }
        } else if (entry.type === "backup") {
          position -= entry.duration;
        } else if (entry.type === "forward") {
          position += entry.duration;
        }
      }
      const endTick = measureEndTick(
        measure,
        part,
        divisions,
        measureStartTick,
        measureMaxPosition(measure),
        ticksPerQuarterNote
      );
      measures.push({
        measureIndex,
        repeatIteration,
        measureNumber: measure.number,
        startTick: measureStartTick,
        endTick
      });
      currentTick = endTick;
    }
    const { tempoEvents, expressions } = bakeTempoMap(
      rawTempo,
      rampMarkers,
      stretches,
      defaultTempo,
      rampSteps
    );
    return { tempoEvents, measures, totalTicks: currentTick, expressions };
  }
  function bakeTempoMap(rawTempo, rampMarkers, stretches, defaultTempo, rampSteps) {
    const sortedRaw = [...rawTempo].sort((a, b) => a.tick - b.tick);
    const startBpm = sortedRaw.length > 0 && sortedRaw[0].tick === 0 ? sortedRaw[0].bpm : defaultTempo;
    const baseChanges = [{ tick: 0, bpm: startBpm }];
    let lastBpm = startBpm;
    for (const ev of sortedRaw) {
      if (ev.tick === 0) continue;
      if (ev.bpm === lastBpm) continue;
      if (baseChanges[baseChanges.length - 1].tick === ev.tick) {
        baseChanges[baseChanges.length - 1].bpm = ev.bpm;
      } else {
        baseChanges.push({ tick: ev.tick, bpm: ev.bpm });
      }
      lastBpm = ev.bpm;
    }
    const baseBpmAt = (tick) => {
      let i = baseChanges.length - 1;
      while (i > 0 && baseChanges[i].tick > tick) i--;
      return baseChanges[i].bpm;
    };
    const rampExpressions = [];
    const rampPoints = [];
    for (const marker of rampMarkers) {
      const from = baseBpmAt(marker.tick);
      const next = baseChanges.find((c) => c.tick > marker.tick && c.bpm !== from);
      if (!next) continue;
      const span = next.tick - marker.tick;
      if (span <= 0) continue;
      for (let k = 1; k < rampSteps; k++) {
        const tick = Math.round(marker.tick + span * k / rampSteps);
        if (tick <= marker.tick || tick >= next.tick) continue;
        const bpm = from + (next.bpm - from) * k / rampSteps;
        rampPoints.push({ tick, bpm });
      }
      rampExpressions.push({ type: marker.kind, startTick: marker.tick, endTick: next.tick });
    }
    const baseTicks = new Set(baseChanges.map((c) => c.tick));
    const stepList = [...baseChanges];
    for (const p of rampPoints) {
      if (!baseTicks.has(p.tick)) stepList.push(p);
    }
    stepList.sort((a, b) => a.tick - b.tick);
    const stepBpmAt = (tick) => {
      let i = stepList.length - 1;
      while (i > 0 && stepList[i].tick > tick) i--;
      return stepList[i].bpm;
    };
    const boundaries = new Set(stepList.map((s) => s.tick));
    for (const s of stretches) {
      boundaries.add(s.startTick);
      boundaries.add(s.endTick);
    }
    const sortedBoundaries = [...boundaries].sort((a, b) => a - b);
    const tempoEvents = [];
    let emittedBpm = null;
    for (const tick of sortedBoundaries) {
      let bpm = stepBpmAt(tick);
      for (const s of stretches) {
        if (tick >= s.startTick && tick < s.endTick) bpm /= s.factor;
      }
      if (emittedBpm === null || bpm !== emittedBpm) {
        tempoEvents.push({ tick, bpm });
        emittedBpm = bpm;
      }
    }
    const expressions = [
      ...stretches.map((s) => ({ type: s.type, startTick: s.startTick, endTick: s.endTick })),
      ...rampExpressions
    ].sort((a, b) => a.startTick - b.startTick || a.endTick - b.endTick);
    return { tempoEvents, expressions };
  }
  function bpmToUsPerQuarter(bpm) {
    return Math.round(6e7 / bpm);
  }
  function makeTickToSec(tempoEvents, defaultTempo, ticksPerQuarterNote) {
    const sorted = [...tempoEvents].sort((a, b) => a.tick - b.tick);
    const startBpm = sorted.length > 0 && sorted[0].tick === 0 ? sorted[0].bpm : defaultTempo;
    const changes = [
      { tick: 0, usPerQuarter: bpmToUsPerQuarter(startBpm) }
    ];
    let lastBpm = startBpm;
    for (const ev of sorted) {
      if (ev.tick === 0) continue;
      if (ev.bpm === lastBpm) continue;
      changes.push({ tick: ev.tick, usPerQuarter: bpmToUsPerQuarter(ev.bpm) });
      lastBpm = ev.bpm;
    }
    const secPerTick = (usPerQuarter) => usPerQuarter / 1e6 / ticksPerQuarterNote;
    const cumSec = [0];
    for (let i = 1; i < changes.length; i++) {
      const dTick = changes[i].tick - changes[i - 1].tick;
      cumSec[i] = cumSec[i - 1] + dTick * secPerTick(changes[i - 1].usPerQuarter);
    }
    return (tick) => {
      let i = changes.length - 1;
      while (i > 0 && changes[i].tick > tick) i--;
      return cumSec[i] + (tick - changes[i].tick) * secPerTick(changes[i].usPerQuarter);
    };
  }
  function buildTimingSidecar(grid, defaultTempo, ticksPerQuarterNote) {
    const tickToSec = makeTickToSec(grid.tempoEvents, defaultTempo, ticksPerQuarterNote);
    const breakpoints = [];
    const measureStartTicks = new Set(grid.measures.map((m) => m.startTick));
    for (const m of grid.measures) {
      breakpoints.push({
        midiSec: tickToSec(m.startTick),
        quarterPos: m.startTick / ticksPerQuarterNote,
        measureNumber: m.measureNumber,
        beatInMeasure: 0,
        repeatIteration: m.repeatIteration
      });
    }
    for (const ev of grid.tempoEvents) {
      if (measureStartTicks.has(ev.tick)) continue;
      const m = grid.measures.find((mm) => ev.tick >= mm.startTick && ev.tick < mm.endTick);
      if (!m) continue;
      breakpoints.push({
        midiSec: tickToSec(ev.tick),
        quarterPos: ev.tick / ticksPerQuarterNote,
        measureNumber: m.measureNumber,
        beatInMeasure: (ev.tick - m.startTick) / ticksPerQuarterNote,
        repeatIteration: m.repeatIteration
      });
    }
    const last = grid.measures[grid.measures.length - 1];
    breakpoints.push({
      midiSec: tickToSec(grid.totalTicks),
      quarterPos: grid.totalTicks / ticksPerQuarterNote,
      measureNumber: last ? last.measureNumber : "0",
      beatInMeasure: last ? (grid.totalTicks - last.startTick) / ticksPerQuarterNote : 0,
      repeatIteration: last ? last.repeatIteration : 0
    });
    breakpoints.sort((a, b) => a.midiSec - b.midiSec || a.quarterPos - b.quarterPos);
    const sidecar = {
      version: "1",
      durationSec: tickToSec(grid.totalTicks),
      ticksPerQuarterNote,
      breakpoints
    };
    if (grid.expressions.length > 0) {
      sidecar.expressions = grid.expressions.map((e) => ({
        type: e.type,
        fromMidiSec: tickToSec(e.startTick),
        toMidiSec: tickToSec(e.endTick)
      })).sort((a, b) => a.fromMidiSec - b.fromMidiSec || a.toMidiSec - b.toMidiSec);
    }
    return sidecar;
  }
  function generatePlaybackTimeline(score, options = {}) {
    const ticksPerQuarterNote = options.ticksPerQuarterNote ?? 480;
    const defaultTempo = options.defaultTempo ?? 120;
    const sequence = generatePlaybackSequence(score);
    const grid = buildGridTimeline(score, ticksPerQuarterNote, sequence, {
      defaultTempo,
      fermataHoldMultiplier: options.fermataHoldMultiplier,
      caesuraSeconds: options.caesuraSeconds,
      breathSeconds: options.breathSeconds,
      tempoRampSteps: options.tempoRampSteps
    });
    return buildTimingSidecar(grid, defaultTempo, ticksPerQuarterNote);
  }
  function withAbsolutePositions(measure) {
    const result = [];
    const state = createPositionState();
    for (const entry of measure.entries) {
      if (entry.type === "note") {
        const notePosition = entry.chord ? state.lastNonChordPosition : state.position;
        result.push({
          ...entry,
          absolutePosition: notePosition
        });
      }
      updatePositionForEntry(state, entry);
    }
    return result;
  }

  // node_modules/musicxml-io/dist/chunk-SQSIGPRD.mjs
  var ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-";
  var ID_LENGTH = 10;
  var POOL_SIZE = ID_LENGTH * 128;
  var pool;
  var poolOffset = 0;
  function randomBytes() {
    if (pool === void 0 || poolOffset + ID_LENGTH > POOL_SIZE) {
      if (pool === void 0) {
        pool = new Uint8Array(POOL_SIZE);
      }
      globalThis.crypto.getRandomValues(pool);
      poolOffset = 0;
    }
    const bytes = pool.subarray(poolOffset, poolOffset + ID_LENGTH);
    poolOffset += ID_LENGTH;
    return bytes;
  }
  function generateId() {
    const bytes = randomBytes();
    let id = "i";
    for (let i = 0; i < ID_LENGTH; i++) {
      id += ALPHABET[bytes[i] & 63];
    }
    return id;
  }

  // node_modules/musicxml-io/dist/chunk-2GFWDBCV.mjs
  var _entityMap = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
  var _entityRegex = /&(?:(amp|lt|gt|quot|apos)|#(\d+)|#x([0-9a-fA-F]+));/g;
  var INVALID_XML_CHARS_RE = /[\x00-\x08\x0B\x0C\x0E-\x1F\uFFFE\uFFFF]/g;
  var INVALID_XML_CHARS_TEST = /[\x00-\x08\x0B\x0C\x0E-\x1F\uFFFE\uFFFF]/;
  function decodeCharRef(match, codePoint) {
    if (codePoint > 1114111 || codePoint >= 55296 && codePoint <= 57343) return match;
    return String.fromCodePoint(codePoint);
  }
  function decodeXmlEntities(s) {
    if (s.indexOf("&") === -1) return s;
    const decoded = s.replace(
      _entityRegex,
      (match, named, dec, hex) => named ? _entityMap[named] : decodeCharRef(match, parseInt(dec ?? hex, dec ? 10 : 16))
    );
    return INVALID_XML_CHARS_TEST.test(decoded) ? decoded.replace(INVALID_XML_CHARS_RE, "") : decoded;
  }
  var EMPTY_ATTRS = Object.freeze({});
  var GT = 62;
  var SLASH = 47;
  var BANG = 33;
  var QUESTION = 63;
  var EQUALS = 61;
  var DQUOTE = 34;
  var SQUOTE = 39;
  var LBRACKET = 91;
  var RBRACKET = 93;
  function isXmlWhitespace(code) {
    return code === 32 || code === 10 || code === 9 || code === 13;
  }
  function parseXml(xml) {
    const root = [];
    const stack = [];
    let children = root;
    const len = xml.length;
    let pos = 0;
    while (pos < len) {
      const lt = xml.indexOf("<", pos);
      if (lt === -1) break;
      if (lt > pos) {
        let whitespaceOnly = true;
        for (let i = pos; i < lt; i++) {
          if (!isXmlWhitespace(xml.charCodeAt(i))) {
            whitespaceOnly = false;
            break;
          }
        }
        if (!whitespaceOnly) {
          children.push(decodeXmlEntities(xml.slice(pos, lt)));
        } else if (children.length === 0 && xml.charCodeAt(lt + 1) === SLASH) {
          children.push(xml.slice(pos, lt));
        }
      }
      const c = xml.charCodeAt(lt + 1);
      if (c === SLASH) {
        const gt = xml.indexOf(">", lt + 2);
        if (gt === -1) break;
        let end = gt;
        while (end > lt + 2 && isXmlWhitespace(xml.charCodeAt(end - 1))) end--;
        const name = xml.slice(lt + 2, end);
        for (let i = stack.length - 1; i >= 0; i--) {
          if (stack[i].tagName === name) {
            stack.length = i;
            break;
          }
        }
        children = stack.length > 0 ? stack[stack.length - 1].children : root;
        pos = gt + 1;
      } else if (c === QUESTION) {
        const end = xml.indexOf("?>", lt + 2);
        pos = end === -1 ? len : end + 2;
      } else if (c === BANG) {
        if (xml.startsWith("<!--", lt)) {
          const end = xml.indexOf("-->", lt + 4);
          pos = end === -1 ? len : end + 3;
        } else if (xml.startsWith("<![CDATA[", lt)) {
          const end = xml.indexOf("]]>", lt + 9);
          children.push(xml.slice(lt + 9, end === -1 ? len : end));
          pos = end === -1 ? len : end + 3;
        } else {
          let i = lt + 2;
          let depth = 0;
          while (i < len) {
            const ch = xml.charCodeAt(i);
            if (ch === LBRACKET) depth++;
            else if (ch === RBRACKET) depth--;
            else if (ch === GT && depth <= 0) break;
            i++;
          }
          pos = i + 1;
        }
      } else {
        let i = lt + 1;
        while (i < len) {
          const ch = xml.charCodeAt(i);
          if (ch === GT || ch === SLASH || isXmlWhitespace(ch)) break;
          i++;
        }
        const tagName = xml.slice(lt + 1, i);
        let attributes = EMPTY_ATTRS;
        let selfClosing = false;
        while (i < len) {
          let ch = xml.charCodeAt(i);
          while (isXmlWhitespace(ch)) ch = xml.charCodeAt(++i);
          if (ch === GT) {
            i++;
            break;
          }
          if (ch === SLASH) {
            selfClosing = true;
            i++;
            continue;
          }
          const nameStart = i;
          while (i < len) {
            ch = xml.charCodeAt(i);
            if (ch === EQUALS || ch === GT || ch === SLASH || isXmlWhitespace(ch)) break;
            i++;
          }
          const attrName = xml.slice(nameStart, i);
          while (isXmlWhitespace(xml.charCodeAt(i))) i++;
          if (xml.charCodeAt(i) === EQUALS) {
            i++;
            while (isXmlWhitespace(xml.charCodeAt(i))) i++;
            ch = xml.charCodeAt(i);
            let value;
            if (ch === DQUOTE || ch === SQUOTE) {
              const valStart = ++i;
              while (i < len && xml.charCodeAt(i) !== ch) i++;
              value = xml.slice(valStart, i);
              i++;
            } else {
              const valStart = i;
              while (i < len) {
                ch = xml.charCodeAt(i);
                if (ch === GT || isXmlWhitespace(ch)) break;
                i++;
              }
              value = xml.slice(valStart, i);
            }
            if (attributes === EMPTY_ATTRS) attributes = {};
            attributes[attrName] = decodeXmlEntities(value);
          } else if (attrName.length > 0) {
            if (attributes === EMPTY_ATTRS) attributes = {};
            attributes[attrName] = "";
          }
        }
        const node = { tagName, attributes, children: [] };
        children.push(node);
        if (!selfClosing) {
          stack.push(node);
          children = node.children;
        }
        pos = i;
      }
    }
    return root;
  }
  function decodeXmlBytes(data) {
    if (data.length >= 2 && data[0] === 254 && data[1] === 255) {
      return new TextDecoder("utf-16be").decode(data);
    }
    if (data.length >= 2 && data[0] === 255 && data[1] === 254) {
      return new TextDecoder("utf-16le").decode(data);
    }
    if (typeof Buffer !== "undefined" && Buffer.isBuffer(data)) {
      const hasBom = data.length >= 3 && data[0] === 239 && data[1] === 187 && data[2] === 191;
      return data.toString("utf8", hasBom ? 3 : 0);
    }
    return new TextDecoder("utf-8").decode(data);
  }
  function parse(input) {
    let xmlString;
    if (typeof input !== "string") {
      xmlString = decodeXmlBytes(input);
    } else if (input.includes("\0")) {
      throw new Error(
        "parse() received a string containing NUL bytes, which indicates a UTF-16 encoded MusicXML file was read without proper encoding detection. Pass a Buffer or Uint8Array instead so the encoding is handled automatically:\n  parse(fs.readFileSync(path))          // Node.js\n  parse(new Uint8Array(arrayBuffer))    // Browser"
      );
    } else {
      xmlString = input;
    }
    if (INVALID_XML_CHARS_TEST.test(xmlString)) {
      xmlString = xmlString.replace(INVALID_XML_CHARS_RE, "");
    }
    const parsed = parseXml(xmlString);
    let scorePartwiseVersion;
    let scorePartwise;
    for (const el of parsed) {
      if (typeof el === "string") continue;
      if (el.tagName === "score-partwise") {
        scorePartwise = el.children;
        const attrs = el.attributes;
        if (attrs["version"]) scorePartwiseVersion = attrs["version"];
        break;
      }
    }
    if (!scorePartwise) {
      throw new Error("Unsupported MusicXML format: only score-partwise is supported");
    }
    const score = parseScorePartwise(scorePartwise);
    if (scorePartwiseVersion) score.version = scorePartwiseVersion;
    return score;
  }
  function findElement(elements, tagName) {
    for (let i = 0; i < elements.length; i++) {
      const el = elements[i];
      if (typeof el !== "string" && el.tagName === tagName) {
        return el.children;
      }
    }
    return void 0;
  }
  function getElementContent(elements, tagName) {
    return findElement(elements, tagName);
  }
  function extractText(elements, preserveWhitespace = false) {
    for (let i = 0; i < elements.length; i++) {
      const item = elements[i];
      if (typeof item === "string") {
        if (preserveWhitespace) return item;
        const trimmed = item.trim();
        if (trimmed.length > 0) return trimmed;
      }
    }
    return "";
  }
  function getElementText(elements, tagName) {
    const content = findElement(elements, tagName);
    if (!content) return void 0;
    const text = extractText(content);
    return text || "";
  }
  function getElementTextAsInt(elements, tagName, defaultValue) {
    const text = getElementText(elements, tagName);
    if (text === void 0 || text === "") return defaultValue;
    const value = parseInt(text, 10);
    return isNaN(value) ? defaultValue : value;
  }
  function collectElements(elements, tagName, parser) {
    const results = [];
    for (let i = 0; i < elements.length; i++) {
      const el = elements[i];
      if (typeof el !== "string" && el.tagName === tagName) {
        results.push(parser(el.children, el.attributes));
      }
    }
    return results;
  }
  function parseFirstElement(elements, tagName, parser) {
    for (let i = 0; i < elements.length; i++) {
      const el = elements[i];
      if (typeof el !== "string" && el.tagName === tagName) {
        return parser(el.children, el.attributes);
      }
    }
    return void 0;
  }
  function hasElement(elements, tagName) {
    return elements.some((el) => typeof el !== "string" && el.tagName === tagName);
  }
  function parseScorePartwise(elements) {
    const metadata = parseMetadata(elements);
    const partListContent = getElementContent(elements, "part-list");
    const partList = partListContent ? parsePartList(partListContent) : [];
    const parts = parseParts(elements);
    const defaults = parseDefaults(elements);
    const credits = parseCredits(elements);
    return {
      _id: generateId(),
      metadata,
      partList,
      parts,
      defaults,
      credits
    };
  }
  function parseMetadata(elements) {
    const metadata = {};
    const work = getElementContent(elements, "work");
    if (work) {
      metadata.workTitle = getElementText(work, "work-title");
      metadata.workNumber = getElementText(work, "work-number");
    }
    metadata.movementTitle = getElementText(elements, "movement-title");
    metadata.movementNumber = getElementText(elements, "movement-number");
    const identification = getElementContent(elements, "identification");
    if (identification) {
      const creators = collectElements(identification, "creator", (content, attrs) => ({ type: attrs["type"], value: extractText(content) }));
      if (creators.length > 0) metadata.creators = creators;
      const rights = collectElements(identification, "rights", (content) => extractText(content));
      if (rights.length > 0) metadata.rights = rights;
      metadata.source = getElementText(identification, "source");
      const encoding = getElementContent(identification, "encoding");
      if (encoding) {
        metadata.encoding = parseEncoding(encoding);
      }
      const miscellaneous = getElementContent(identification, "miscellaneous");
      if (miscellaneous) {
        const fields = collectElements(miscellaneous, "miscellaneous-field", (content, attrs) => ({ name: attrs["name"] || "", value: extractText(content) }));
        if (fields.length > 0) metadata.miscellaneous = fields;
      }
    }
    return metadata;
  }
  function parseEncoding(elements) {
    const encoding = {};
    const software = collectElements(elements, "software", (c) => extractText(c));
    const encoder = collectElements(elements, "encoder", (c) => extractText(c));
    const supports = collectElements(elements, "supports", (_, attrs) => {
      const support = { element: attrs["element"] || "", type: attrs["type"] === "no" ? "no" : "yes" };
      if (attrs["attribute"]) support.attribute = attrs["attribute"];
      if (attrs["value"]) support.value = attrs["value"];
      return support;
    });
    encoding.encodingDate = getElementText(elements, "encoding-date");
    encoding.encodingDescription = getElementText(elements, "encoding-description");
    if (software.length > 0) encoding.software = software;
    if (encoder.length > 0) encoding.encoder = encoder;
    if (supports.length > 0) encoding.supports = supports;
    return encoding;
  }
  function parseDefaults(elements) {
    const defaultsContent = getElementContent(elements, "defaults");
    if (!defaultsContent) return void 0;
    const defaults = {};
    const scaling = getElementContent(defaultsContent, "scaling");
    if (scaling) {
      const mm = getElementText(scaling, "millimeters");
      const tenths = getElementText(scaling, "tenths");
      if (mm && tenths) {
        defaults.scaling = {
          millimeters: parseFloat(mm),
          tenths: parseFloat(tenths)
        };
      }
    }
    const pageLayout = getElementContent(defaultsContent, "page-layout");
    if (pageLayout) {
      defaults.pageLayout = parsePageLayout(pageLayout);
    }
    const systemLayout = getElementContent(defaultsContent, "system-layout");
    if (systemLayout) {
      defaults.systemLayout = parseSystemLayout(systemLayout);
    }
    const staffLayouts = [];
    for (const el of defaultsContent) {
      if (typeof el === "string") continue;
      if (el.tagName === "staff-layout") {
        const attrs = el.attributes;
        const content = el.children;
        const layout = {};
        if (attrs["number"]) layout.number = parseInt(attrs["number"], 10);
        const dist = getElementText(content, "staff-distance");
        if (dist) layout.staffDistance = parseFloat(dist);
        staffLayouts.push(layout);
      }
    }
    if (staffLayouts.length > 0) defaults.staffLayout = staffLayouts;
    for (const el of defaultsContent) {
      if (typeof el === "string") continue;
      if (el.tagName === "music-font") {
        const attrs = el.attributes;
        defaults.musicFont = {
          fontFamily: attrs["font-family"],
          fontSize: attrs["font-size"],
          fontStyle: attrs["font-style"],
          fontWeight: attrs["font-weight"]
        };
        break;
      }
    }
    for (const el of defaultsContent) {
      if (typeof el === "string") continue;
      if (el.tagName === "word-font") {
        const attrs = el.attributes;
        defaults.wordFont = {
          fontFamily: attrs["font-family"],
          fontSize: attrs["font-size"],
          fontStyle: attrs["font-style"],
          fontWeight: attrs["font-weight"]
        };
        break;
      }
    }
    const lyricFonts = [];
    for (const el of defaultsContent) {
      if (typeof el === "string") continue;
      if (el.tagName === "lyric-font") {
        const attrs = el.attributes;
        const lf = {
          fontFamily: attrs["font-family"],
          fontSize: attrs["font-size"],
          fontStyle: attrs["font-style"],
          fontWeight: attrs["font-weight"]
        };
        if (attrs["number"]) lf.number = parseInt(attrs["number"], 10);
        if (attrs["name"]) lf.name = attrs["name"];
        lyricFonts.push(lf);
      }
    }
    if (lyricFonts.length > 0) defaults.lyricFont = lyricFonts;
    const lyricLanguages = [];
    for (const el of defaultsContent) {
      if (typeof el === "string") continue;
      if (el.tagName === "lyric-language") {
        const attrs = el.attributes;
        const ll = {
          xmlLang: attrs["xml:lang"] || ""
        };
        if (attrs["number"]) ll.number = parseInt(attrs["number"], 10);
        if (attrs["name"]) ll.name = attrs["name"];
        lyricLanguages.push(ll);
      }
    }
    if (lyricLanguages.length > 0) defaults.lyricLanguage = lyricLanguages;
    const appResult = parseFirstElement(defaultsContent, "appearance", (appContent) => {
      const appearance = {};
      const lineWidths = collectElements(appContent, "line-width", (c, a) => ({ type: a["type"] || "", value: parseFloat(extractText(c)) || 0 }));
      const noteSizes = collectElements(appContent, "note-size", (c, a) => ({ type: a["type"] || "", value: parseFloat(extractText(c)) || 0 }));
      const distances = collectElements(appContent, "distance", (c, a) => ({ type: a["type"] || "", value: parseFloat(extractText(c)) || 0 }));
      const glyphs = collectElements(appContent, "glyph", (c, a) => ({ type: a["type"] || "", value: extractText(c) }));
      if (lineWidths.length > 0) appearance["line-widths"] = lineWidths;
      if (noteSizes.length > 0) appearance["note-sizes"] = noteSizes;
      if (distances.length > 0) appearance["distances"] = distances;
      if (glyphs.length > 0) appearance["glyphs"] = glyphs;
      return Object.keys(appearance).length > 0 ? appearance : void 0;
    });
    if (appResult) defaults.appearance = appResult;
    return defaults;
  }
  function parsePageLayout(elements) {
    const layout = {};
    const height = getElementText(elements, "page-height");
    if (height) layout.pageHeight = parseFloat(height);
    const width = getElementText(elements, "page-width");
    if (width) layout.pageWidth = parseFloat(width);
    const margins = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "page-margins") {
        const attrs = el.attributes;
        const content = el.children;
        const m = {};
        if (attrs["type"] === "odd" || attrs["type"] === "even" || attrs["type"] === "both") {
          m.type = attrs["type"];
        }
        const left = getElementText(content, "left-margin");
        if (left) {
          m.leftMargin = parseFloat(left);
          m.leftMarginRaw = left;
        }
        const right = getElementText(content, "right-margin");
        if (right) {
          m.rightMargin = parseFloat(right);
          m.rightMarginRaw = right;
        }
        const top = getElementText(content, "top-margin");
        if (top) {
          m.topMargin = parseFloat(top);
          m.topMarginRaw = top;
        }
        const bottom = getElementText(content, "bottom-margin");
        if (bottom) {
          m.bottomMargin = parseFloat(bottom);
          m.bottomMarginRaw = bottom;
        }
        margins.push(m);
      }
    }
    if (margins.length > 0) layout.pageMargins = margins;
    return layout;
  }
  function parseSystemLayout(elements) {
    const layout = {};
    const margins = getElementContent(elements, "system-margins");
    if (margins) {
      layout.systemMargins = {};
      const left = getElementText(margins, "left-margin");
      if (left) {
        layout.systemMargins.leftMargin = parseFloat(left);
        layout.systemMargins.leftMarginRaw = left;
      }
      const right = getElementText(margins, "right-margin");
      if (right) {
        layout.systemMargins.rightMargin = parseFloat(right);
        layout.systemMargins.rightMarginRaw = right;
      }
    }
    const dist = getElementText(elements, "system-distance");
    if (dist) {
      layout.systemDistance = parseFloat(dist);
      layout.systemDistanceRaw = dist;
    }
    const topDist = getElementText(elements, "top-system-distance");
    if (topDist) {
      layout.topSystemDistance = parseFloat(topDist);
      layout.topSystemDistanceRaw = topDist;
    }
    const dividers = getElementContent(elements, "system-dividers");
    if (dividers) {
      layout.systemDividers = {};
      for (const el of dividers) {
        if (typeof el === "string") continue;
        if (el.tagName === "left-divider") {
          const attrs = el.attributes;
          layout.systemDividers.leftDivider = {
            printObject: attrs["print-object"] === "yes" ? true : attrs["print-object"] === "no" ? false : void 0,
            halign: attrs["halign"],
            valign: attrs["valign"]
          };
        }
        if (el.tagName === "right-divider") {
          const attrs = el.attributes;
          layout.systemDividers.rightDivider = {
            printObject: attrs["print-object"] === "yes" ? true : attrs["print-object"] === "no" ? false : void 0,
            halign: attrs["halign"],
            valign: attrs["valign"]
          };
        }
      }
    }
    return layout;
  }
  function parseCredits(elements) {
    const credits = collectElements(elements, "credit", (content, attrs) => {
      const credit = { _id: attrs["id"] || generateId() };
      if (attrs["page"]) credit.page = parseInt(attrs["page"], 10);
      const types = collectElements(content, "credit-type", (c) => extractText(c));
      const words = collectElements(content, "credit-words", (c, a) => {
        const cw = { text: extractText(c, true) };
        if (a["default-x"]) cw.defaultX = parseFloat(a["default-x"]);
        if (a["default-y"]) cw.defaultY = parseFloat(a["default-y"]);
        if (a["font-family"]) cw.fontFamily = a["font-family"];
        if (a["font-size"]) cw.fontSize = a["font-size"];
        if (a["font-weight"]) cw.fontWeight = a["font-weight"];
        if (a["font-style"]) cw.fontStyle = a["font-style"];
        if (a["justify"]) cw.justify = a["justify"];
        if (a["halign"]) cw.halign = a["halign"];
        if (a["valign"]) cw.valign = a["valign"];
        if (a["letter-spacing"]) cw.letterSpacing = a["letter-spacing"];
        if (a["xml:lang"]) cw.xmlLang = a["xml:lang"];
        if (a["xml:space"]) cw.xmlSpace = a["xml:space"];
        if (a["color"]) cw.color = a["color"];
        return cw;
      });
      const images = collectElements(content, "credit-image", (_c, a) => {
        const ci = { source: a["source"] || "", type: a["type"] || "" };
        if (a["height"]) ci.height = parseFloat(a["height"]);
        if (a["width"]) ci.width = parseFloat(a["width"]);
        if (a["default-x"]) ci.defaultX = parseFloat(a["default-x"]);
        if (a["default-y"]) ci.defaultY = parseFloat(a["default-y"]);
        if (a["relative-x"]) ci.relativeX = parseFloat(a["relative-x"]);
        if (a["relative-y"]) ci.relativeY = parseFloat(a["relative-y"]);
        if (a["halign"]) ci.halign = a["halign"];
        if (a["valign"]) ci.valign = a["valign"];
        return ci;
      });
      if (types.length > 0) credit.creditType = types;
      if (words.length > 0) credit.creditWords = words;
      if (images.length > 0) credit.creditImage = images[0];
      return credit;
    });
    return credits.length > 0 ? credits : void 0;
  }
  function parseDisplayTexts(elements) {
    return collectElements(elements, "display-text", (c, a) => {
      const dt = { text: extractText(c) };
      if (a["font-family"]) dt.fontFamily = a["font-family"];
      if (a["font-size"]) dt.fontSize = a["font-size"];
      if (a["font-style"]) dt.fontStyle = a["font-style"];
      if (a["font-weight"]) dt.fontWeight = a["font-weight"];
      if (a["xml:space"]) dt.xmlSpace = a["xml:space"];
      if (a["color"]) dt.color = a["color"];
      return dt;
    });
  }
  function parsePartList(elements) {
    const partList = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "score-part") {
        const attrs = el.attributes;
        const content = el.children;
        const partInfo = {
          _id: generateId(),
          type: "score-part",
          id: attrs["id"] || ""
        };
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "part-name") {
            const pnAttrs = child.attributes;
            partInfo.name = getElementText(content, "part-name") ?? "";
            if (pnAttrs["print-object"] === "no") {
              partInfo.namePrintObject = false;
            }
            if (pnAttrs["color"]) partInfo.nameColor = pnAttrs["color"];
            break;
          }
        }
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "part-name-display") {
            partInfo.partNameDisplay = parseDisplayTexts(child.children);
            break;
          }
        }
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "part-abbreviation") {
            const paAttrs = child.attributes;
            partInfo.abbreviation = getElementText(content, "part-abbreviation") ?? "";
            if (paAttrs["print-object"] === "no") {
              partInfo.abbreviationPrintObject = false;
            }
            if (paAttrs["color"]) partInfo.abbreviationColor = paAttrs["color"];
            break;
          }
        }
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "part-abbreviation-display") {
            partInfo.partAbbreviationDisplay = parseDisplayTexts(child.children);
            break;
          }
        }
        const instruments = [];
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "score-instrument") {
            const instAttrs = child.attributes;
            const instContent = child.children;
            const inst = {
              id: instAttrs["id"] || "",
              name: getElementText(instContent, "instrument-name") || ""
            };
            const abbr = getElementText(instContent, "instrument-abbreviation");
            if (abbr) inst.abbreviation = abbr;
            const sound = getElementText(instContent, "instrument-sound");
            if (sound) inst.sound = sound;
            if (hasElement(instContent, "solo")) inst.solo = true;
            if (hasElement(instContent, "ensemble")) {
              const ensText = getElementText(instContent, "ensemble");
              inst.ensemble = ensText ? parseInt(ensText, 10) : 0;
            }
            instruments.push(inst);
          }
        }
        if (instruments.length > 0) partInfo.scoreInstruments = instruments;
        const groups = collectElements(content, "group", (c) => extractText(c));
        if (groups.length > 0) partInfo.groups = groups;
        const midiInstruments = [];
        for (const child of content) {
          if (typeof child === "string") continue;
          if (child.tagName === "midi-instrument") {
            const midiAttrs = child.attributes;
            const midiContent = child.children;
            const midi = {
              id: midiAttrs["id"] || ""
            };
            const channel = getElementText(midiContent, "midi-channel");
            if (channel) midi.channel = parseInt(channel, 10);
            const name = getElementText(midiContent, "midi-name");
            if (name) midi.name = name;
            const bank = getElementText(midiContent, "midi-bank");
            if (bank) midi.bank = parseInt(bank, 10);
            const program = getElementText(midiContent, "midi-program");
            if (program) midi.program = parseInt(program, 10);
            const unpitched = getElementText(midiContent, "midi-unpitched");
            if (unpitched) midi.unpitched = parseInt(unpitched, 10);
            const volume = getElementText(midiContent, "volume");
            if (volume) midi.volume = parseFloat(volume);
            const pan = getElementText(midiContent, "pan");
            if (pan) midi.pan = parseFloat(pan);
            const elevation = getElementText(midiContent, "elevation");
            if (elevation) midi.elevation = parseFloat(elevation);
            midiInstruments.push(midi);
          }
        }
        if (midiInstruments.length > 0) partInfo.midiInstruments = midiInstruments;
        partList.push(partInfo);
      } else if (el.tagName === "part-group") {
        const attrs = el.attributes;
        const content = el.children;
        const group = {
          _id: attrs["id"] || generateId(),
          type: "part-group",
          groupType: attrs["type"] === "stop" ? "stop" : "start"
        };
        if (attrs["number"]) group.number = parseInt(attrs["number"], 10);
        parseFirstElement(content, "group-name", (c, a) => {
          const name = extractText(c);
          if (name) group.groupName = name;
          if (a["color"]) group.groupNameColor = a["color"];
        });
        const gnd = parseFirstElement(content, "group-name-display", (c) => parseDisplayTexts(c));
        if (gnd) group.groupNameDisplay = gnd;
        parseFirstElement(content, "group-abbreviation", (c, a) => {
          const abbr = extractText(c);
          if (abbr) group.groupAbbreviation = abbr;
          if (a["color"]) group.groupAbbreviationColor = a["color"];
        });
        const gad = parseFirstElement(content, "group-abbreviation-display", (c) => parseDisplayTexts(c));
        if (gad) group.groupAbbreviationDisplay = gad;
        parseFirstElement(content, "group-symbol", (c, a) => {
          const symbol = extractText(c);
          if (["none", "brace", "line", "bracket", "square"].includes(symbol)) {
            group.groupSymbol = symbol;
          }
          if (a["default-x"]) group.groupSymbolDefaultX = parseFloat(a["default-x"]);
          if (a["color"]) group.groupSymbolColor = a["color"];
        });
        const barline = getElementText(content, "group-barline");
        if (barline && ["yes", "no", "Mensurstrich"].includes(barline)) {
          group.groupBarline = barline;
        }
        partList.push(group);
      }
    }
    return partList;
  }
  function parseParts(elements) {
    const parts = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "part") {
        const attrs = el.attributes;
        const content = el.children;
        const part = {
          _id: generateId(),
          id: attrs["id"] || "",
          measures: []
        };
        for (const measureEl of content) {
          if (typeof measureEl === "string") continue;
          if (measureEl.tagName === "measure") {
            const measureAttrs = measureEl.attributes;
            const measureContent = measureEl.children;
            part.measures.push(parseMeasure(measureContent, measureAttrs));
          }
        }
        parts.push(part);
      }
    }
    return parts;
  }
  function parseMeasure(elements, attrs) {
    const measure = {
      _id: attrs["id"] || generateId(),
      number: attrs["number"] || "0",
      // Keep as string per MusicXML spec (token type)
      entries: []
    };
    if (attrs["width"]) measure.width = parseFloat(attrs["width"]);
    if (attrs["implicit"] === "yes") measure.implicit = true;
    const barlines = [];
    let hasSeenNote = false;
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "attributes") {
        const parsedAttrs = parseAttributes(el.children, el.attributes);
        if (!hasSeenNote && !measure.attributes) {
          measure.attributes = parsedAttrs;
        } else {
          const attrEntry = {
            _id: el.attributes["id"] || generateId(),
            type: "attributes",
            attributes: parsedAttrs
          };
          measure.entries.push(attrEntry);
        }
      } else if (el.tagName === "note") {
        hasSeenNote = true;
        measure.entries.push(parseNote(el.children, el.attributes));
      } else if (el.tagName === "backup") {
        measure.entries.push(parseBackup(el.children));
      } else if (el.tagName === "forward") {
        measure.entries.push(parseForward(el.children, el.attributes));
      } else if (el.tagName === "direction") {
        measure.entries.push(parseDirection(el.children, el.attributes));
      } else if (el.tagName === "barline") {
        barlines.push(parseBarline(el.children, el.attributes));
      } else if (el.tagName === "print") {
        measure.print = parsePrint(el.children, el.attributes);
      } else if (el.tagName === "harmony") {
        measure.entries.push(parseHarmony(el.children, el.attributes));
      } else if (el.tagName === "figured-bass") {
        measure.entries.push(parseFiguredBass(el.children, el.attributes));
      } else if (el.tagName === "sound") {
        measure.entries.push(parseSound(el.children, el.attributes));
      } else if (el.tagName === "grouping") {
        const grpAttrs = el.attributes;
        const grouping = {
          _id: generateId(),
          type: "grouping",
          groupingType: grpAttrs["type"] || "start"
        };
        if (grpAttrs["number"]) grouping.number = grpAttrs["number"];
        measure.entries.push(grouping);
      }
    }
    if (barlines.length > 0) measure.barlines = barlines;
    return measure;
  }
  function parsePrint(elements, attrs) {
    const print = {};
    if (attrs["new-system"] === "yes") print.newSystem = true;
    if (attrs["new-page"] === "yes") print.newPage = true;
    if (attrs["blank-page"]) print.blankPage = parseInt(attrs["blank-page"], 10);
    if (attrs["page-number"]) print.pageNumber = attrs["page-number"];
    const sysLayout = getElementContent(elements, "system-layout");
    if (sysLayout) print.systemLayout = parseSystemLayout(sysLayout);
    const pageLayout = getElementContent(elements, "page-layout");
    if (pageLayout) print.pageLayout = parsePageLayout(pageLayout);
    const staffLayouts = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "staff-layout") {
        const layoutAttrs = el.attributes;
        const content = el.children;
        const layout = {};
        if (layoutAttrs["number"]) layout.number = parseInt(layoutAttrs["number"], 10);
        const dist = getElementText(content, "staff-distance");
        if (dist) layout.staffDistance = parseFloat(dist);
        staffLayouts.push(layout);
      }
    }
    if (staffLayouts.length > 0) print.staffLayouts = staffLayouts;
    const measureLayout = getElementContent(elements, "measure-layout");
    if (measureLayout) {
      const dist = getElementText(measureLayout, "measure-distance");
      if (dist) print.measureLayout = { measureDistance: parseFloat(dist) };
    }
    parseFirstElement(elements, "measure-numbering", (c, a) => {
      const measureNumbering = { value: extractText(c) };
      if (a["system"] && ["only-top", "only-bottom", "all-system-parts", "none"].includes(a["system"])) {
        measureNumbering.system = a["system"];
      }
      print.measureNumbering = measureNumbering;
    });
    const pnd = parseFirstElement(elements, "part-name-display", (c) => parseDisplayTexts(c));
    if (pnd) print.partNameDisplay = pnd;
    const pad = parseFirstElement(elements, "part-abbreviation-display", (c) => parseDisplayTexts(c));
    if (pad) print.partAbbreviationDisplay = pad;
    return print;
  }
  function parseAttributes(elements, xmlAttrs = {}) {
    const attrs = { _id: xmlAttrs["id"] || generateId() };
    const divisions = getElementTextAsInt(elements, "divisions");
    if (divisions !== void 0) attrs.divisions = divisions;
    const staves = getElementTextAsInt(elements, "staves");
    if (staves !== void 0) attrs.staves = staves;
    const instruments = getElementTextAsInt(elements, "instruments");
    if (instruments !== void 0) attrs.instruments = instruments;
    const time = getElementContent(elements, "time");
    if (time) {
      attrs.time = parseTimeSignature(time, elements);
    }
    const keys = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "key") {
        const keyAttrs = el.attributes;
        const keyContent = el.children;
        const key = parseKeySignature(keyContent);
        if (keyAttrs["number"]) key.number = parseInt(keyAttrs["number"], 10);
        if (keyAttrs["print-object"] === "no") key.printObject = false;
        else if (keyAttrs["print-object"] === "yes") key.printObject = true;
        if (keyAttrs["color"]) key.color = keyAttrs["color"];
        keys.push(key);
      }
    }
    if (keys.length === 1) {
      attrs.key = keys[0];
    } else if (keys.length > 1) {
      attrs.keys = keys;
    }
    const clefs = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "clef") {
        const clefAttrs = el.attributes;
        clefs.push(parseClef(el.children, clefAttrs));
      }
    }
    if (clefs.length > 0) attrs.clef = clefs;
    const transpose2 = getElementContent(elements, "transpose");
    if (transpose2) {
      attrs.transpose = parseTranspose(transpose2);
    }
    const staffDetailsList = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "staff-details") {
        const sdAttrs = el.attributes;
        const content = el.children;
        staffDetailsList.push(parseStaffDetails(content, sdAttrs));
      }
    }
    if (staffDetailsList.length > 0) attrs.staffDetails = staffDetailsList;
    const measureStyleList = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "measure-style") {
        const msAttrs = el.attributes;
        const content = el.children;
        measureStyleList.push(parseMeasureStyle(content, msAttrs));
      }
    }
    if (measureStyleList.length > 0) attrs.measureStyle = measureStyleList;
    return attrs;
  }
  function parseTimeSignature(elements, parentElements) {
    if (hasElement(elements, "senza-misura")) {
      const time2 = {
        beats: "",
        beatType: 0,
        senzaMisura: true
      };
      return time2;
    }
    const beatsStrList = collectElements(elements, "beats", (c) => extractText(c));
    const beatTypeList = collectElements(elements, "beat-type", (c) => parseInt(extractText(c), 10));
    const time = {
      beats: beatsStrList.length > 0 ? beatsStrList[0] : "4",
      beatType: beatTypeList.length > 0 ? beatTypeList[0] : 4
    };
    if (beatsStrList.length > 1 || beatTypeList.length > 1) {
      time.beatsList = beatsStrList.map((b) => parseInt(b, 10));
      time.beatsStrList = beatsStrList;
      time.beatTypeList = beatTypeList;
    }
    for (const el of parentElements) {
      if (typeof el === "string") continue;
      if (el.tagName === "time") {
        const attrs = el.attributes;
        if (attrs["symbol"]) {
          const sym = attrs["symbol"];
          if (["common", "cut", "single-number", "note", "dotted-note", "normal"].includes(sym)) {
            time.symbol = sym;
          }
        }
        if (attrs["print-object"] === "no") {
          time.printObject = false;
        }
        if (attrs["color"]) time.color = attrs["color"];
        break;
      }
    }
    return time;
  }
  function parseKeySignature(elements) {
    const fifths = getElementText(elements, "fifths");
    const mode = getElementText(elements, "mode");
    const key = {
      fifths: parseInt(fifths || "0", 10)
    };
    const validModes = ["major", "minor", "dorian", "phrygian", "lydian", "mixolydian", "aeolian", "ionian", "locrian", "none"];
    if (mode && validModes.includes(mode)) {
      key.mode = mode;
    }
    parseFirstElement(elements, "cancel", (c, a) => {
      key.cancel = parseInt(extractText(c), 10);
      if (a["location"]) key.cancelLocation = a["location"];
    });
    const keySteps = collectElements(elements, "key-step", (c) => extractText(c));
    const keyAlters = collectElements(elements, "key-alter", (c) => parseFloat(extractText(c)));
    const keyOctaves = collectElements(elements, "key-octave", (c, a) => {
      const ko = { number: parseInt(a["number"] || "1", 10), octave: parseInt(extractText(c), 10) };
      if (a["cancel"] === "yes") ko.cancel = true;
      else if (a["cancel"] === "no") ko.cancel = false;
      return ko;
    });
    if (keySteps.length > 0) key.keySteps = keySteps;
    if (keyAlters.length > 0) key.keyAlters = keyAlters;
    if (keyOctaves.length > 0) key.keyOctaves = keyOctaves;
    return key;
  }
  function parseClef(elements, attrs) {
    const sign = getElementText(elements, "sign") || "G";
    const lineText = getElementText(elements, "line");
    const clef = { sign };
    if (lineText) {
      clef.line = parseInt(lineText, 10);
    }
    if (attrs["number"]) {
      clef.staff = parseInt(attrs["number"], 10);
    }
    const octaveChange = getElementTextAsInt(elements, "clef-octave-change");
    if (octaveChange !== void 0) {
      clef.clefOctaveChange = octaveChange;
    }
    if (attrs["print-object"] === "no") {
      clef.printObject = false;
    } else if (attrs["print-object"] === "yes") {
      clef.printObject = true;
    }
    if (attrs["after-barline"] === "yes") {
      clef.afterBarline = true;
    }
    if (attrs["color"]) {
      clef.color = attrs["color"];
    }
    return clef;
  }
  function parseTranspose(elements) {
    const transpose2 = {
      diatonic: getElementTextAsInt(elements, "diatonic", 0),
      chromatic: getElementTextAsInt(elements, "chromatic", 0)
    };
    const octaveChange = getElementTextAsInt(elements, "octave-change");
    if (octaveChange !== void 0) {
      transpose2.octaveChange = octaveChange;
    }
    return transpose2;
  }
  function parseNote(elements, attrs) {
    const note = {
      _id: attrs["id"] || generateId(),
      type: "note",
      duration: 0
    };
    if (attrs["default-x"]) note.defaultX = parseFloat(attrs["default-x"]);
    if (attrs["default-y"]) note.defaultY = parseFloat(attrs["default-y"]);
    if (attrs["relative-x"]) note.relativeX = parseFloat(attrs["relative-x"]);
    if (attrs["relative-y"]) note.relativeY = parseFloat(attrs["relative-y"]);
    if (attrs["dynamics"]) note.dynamics = parseFloat(attrs["dynamics"]);
    if (attrs["print-object"] === "no") note.printObject = false;
    if (attrs["print-dot"] === "no") note.printDot = false;
    if (attrs["print-dot"] === "yes") note.printDot = true;
    if (attrs["print-spacing"] === "yes") note.printSpacing = true;
    if (attrs["print-spacing"] === "no") note.printSpacing = false;
    if (attrs["color"]) note.color = attrs["color"];
    let dotCount = 0;
    let notationsIndex = 0;
    let tieElements;
    let beams;
    let allNotations;
    let lyrics;
    let hasGrace = false;
    for (let i = 0; i < elements.length; i++) {
      const el = elements[i];
      if (typeof el === "string") continue;
      const tag = el.tagName;
      const elAttrs = el.attributes;
      const c = el.children;
      switch (tag) {
        case "duration": {
          const text = extractText(c);
          if (text) note.duration = parseInt(text, 10) || 0;
          break;
        }
        case "voice": {
          const text = extractText(c);
          if (text) note.voice = text;
          break;
        }
        case "cue":
          note.cue = true;
          break;
        case "chord":
          note.chord = true;
          break;
        case "dot":
          dotCount++;
          if (elAttrs["color"] && note.dotColor === void 0) note.dotColor = elAttrs["color"];
          break;
        case "instrument":
          if (elAttrs["id"]) note.instrument = elAttrs["id"];
          break;
        case "pitch":
          note.pitch = parsePitch(c);
          break;
        case "rest": {
          const restInfo = {};
          if (elAttrs["measure"] === "yes") restInfo.measure = true;
          const displayStep = getElementText(c, "display-step");
          if (displayStep) restInfo.displayStep = displayStep;
          const displayOctave = getElementText(c, "display-octave");
          if (displayOctave) restInfo.displayOctave = parseInt(displayOctave, 10);
          note.rest = restInfo;
          break;
        }
        case "unpitched": {
          note.unpitched = {};
          const displayStep = getElementText(c, "display-step");
          if (displayStep) note.unpitched.displayStep = displayStep;
          const displayOctave = getElementText(c, "display-octave");
          if (displayOctave) note.unpitched.displayOctave = parseInt(displayOctave, 10);
          break;
        }
        case "staff": {
          const text = extractText(c);
          if (text) {
            const v = parseInt(text, 10);
            if (!isNaN(v)) note.staff = v;
          }
          break;
        }
        case "type": {
          const noteType = extractText(c);
          if (isValidNoteType(noteType)) note.noteType = noteType;
          if (elAttrs["size"]) note.noteTypeSize = elAttrs["size"];
          if (elAttrs["color"]) note.noteTypeColor = elAttrs["color"];
          break;
        }
        case "accidental": {
          const accValue = extractText(c);
          if (isValidAccidental(accValue)) {
            const accInfo = { value: accValue };
            if (elAttrs["cautionary"] === "yes") accInfo.cautionary = true;
            if (elAttrs["editorial"] === "yes") accInfo.editorial = true;
            if (elAttrs["parentheses"] === "yes") accInfo.parentheses = true;
            if (elAttrs["bracket"] === "yes") accInfo.bracket = true;
            if (elAttrs["relative-x"]) accInfo.relativeX = parseFloat(elAttrs["relative-x"]);
            if (elAttrs["relative-y"]) accInfo.relativeY = parseFloat(elAttrs["relative-y"]);
            if (elAttrs["color"]) accInfo.color = elAttrs["color"];
            if (elAttrs["size"]) accInfo.size = elAttrs["size"];
            if (elAttrs["font-size"]) accInfo.fontSize = elAttrs["font-size"];
            note.accidental = accInfo;
          }
          break;
        }
        case "stem": {
          const stemValue = extractText(c);
          if (stemValue === "up" || stemValue === "down" || stemValue === "none" || stemValue === "double") {
            note.stem = { value: stemValue };
            if (elAttrs["default-x"]) note.stem.defaultX = parseFloat(elAttrs["default-x"]);
            if (elAttrs["default-y"]) note.stem.defaultY = parseFloat(elAttrs["default-y"]);
            if (elAttrs["color"]) note.stem.color = elAttrs["color"];
          }
          break;
        }
        case "notehead": {
          const nhValue = extractText(c);
          if (isValidNotehead(nhValue)) {
            const nhInfo = { value: nhValue };
            if (elAttrs["filled"] === "yes") nhInfo.filled = true;
            else if (elAttrs["filled"] === "no") nhInfo.filled = false;
            if (elAttrs["parentheses"] === "yes") nhInfo.parentheses = true;
            if (elAttrs["color"]) nhInfo.color = elAttrs["color"];
            note.notehead = nhInfo;
          }
          break;
        }
        case "tie": {
          const t = elAttrs["type"];
          if (t === "start" || t === "stop" || t === "continue") {
            if (!tieElements) tieElements = [];
            tieElements.push({ type: t });
          }
          break;
        }
        case "beam": {
          if (!beams) beams = [];
          beams.push(parseBeam(c, elAttrs));
          break;
        }
        case "notations": {
          const parsedNotations = parseNotations(c, notationsIndex);
          if (parsedNotations.length > 0) {
            if (!allNotations) allNotations = [];
            for (let j = 0; j < parsedNotations.length; j++) allNotations.push(parsedNotations[j]);
          }
          notationsIndex++;
          break;
        }
        case "lyric": {
          if (!lyrics) lyrics = [];
          lyrics.push(parseLyric(c, elAttrs));
          break;
        }
        case "grace": {
          hasGrace = true;
          note.grace = {};
          if (elAttrs["slash"] === "yes") note.grace.slash = true;
          else if (elAttrs["slash"] === "no") note.grace.slash = false;
          if (elAttrs["steal-time-previous"]) {
            note.grace.stealTimePrevious = parseFloat(elAttrs["steal-time-previous"]);
          }
          if (elAttrs["steal-time-following"]) {
            note.grace.stealTimeFollowing = parseFloat(elAttrs["steal-time-following"]);
          }
          break;
        }
        case "time-modification": {
          const actualNotes = getElementText(c, "actual-notes");
          const normalNotes = getElementText(c, "normal-notes");
          const normalType = getElementText(c, "normal-type");
          note.timeModification = {
            actualNotes: parseInt(actualNotes || "3", 10),
            normalNotes: parseInt(normalNotes || "2", 10)
          };
          if (normalType && isValidNoteType(normalType)) {
            note.timeModification.normalType = normalType;
          }
          let ndCount = 0;
          for (const tm of c) {
            if (typeof tm !== "string" && tm.tagName === "normal-dot") ndCount++;
          }
          if (ndCount > 0) note.timeModification.normalDots = ndCount;
          break;
        }
      }
    }
    if (dotCount > 0) note.dots = dotCount;
    if (tieElements) {
      note.tie = tieElements[0];
      if (tieElements.length > 1) note.ties = tieElements;
    }
    if (beams) note.beam = beams;
    if (allNotations) note.notations = allNotations;
    if (lyrics) note.lyrics = lyrics;
    if (hasGrace) note.duration = 0;
    return note;
  }
  function parsePitch(elements) {
    const step = getElementText(elements, "step") || "C";
    const octave = parseInt(getElementText(elements, "octave") || "4", 10);
    const alter = getElementText(elements, "alter");
    const pitch = { step, octave };
    if (alter) {
      const alterValue = parseFloat(alter);
      if (alterValue !== 0) {
        pitch.alter = alterValue;
      }
    }
    return pitch;
  }
  function parseBeam(elements, attrs) {
    const text = extractText(elements);
    const validTypes = ["begin", "continue", "end", "forward hook", "backward hook"];
    const validFans = ["accel", "rit", "none"];
    const beam = {
      number: parseInt(attrs["number"] || "1", 10),
      type: validTypes.includes(text) ? text : "begin"
    };
    if (attrs["fan"] && validFans.includes(attrs["fan"])) {
      beam.fan = attrs["fan"];
    }
    if (attrs["color"]) beam.color = attrs["color"];
    return beam;
  }
  function parseNotations(elements, notationsIndex = 0) {
    const notations = [];
    let articulationsIndex = 0;
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "tied") {
        const attrs = el.attributes;
        const tied = {
          type: "tied",
          tiedType: attrs["type"] || "start",
          number: attrs["number"] ? parseInt(attrs["number"], 10) : void 0,
          orientation: attrs["orientation"],
          color: attrs["color"],
          notationsIndex
        };
        notations.push(tied);
      } else if (el.tagName === "slur") {
        const attrs = el.attributes;
        const slur = {
          type: "slur",
          slurType: attrs["type"] || "start",
          number: attrs["number"] ? parseInt(attrs["number"], 10) : void 0,
          lineType: attrs["line-type"],
          orientation: attrs["orientation"],
          defaultX: attrs["default-x"] ? parseFloat(attrs["default-x"]) : void 0,
          defaultY: attrs["default-y"] ? parseFloat(attrs["default-y"]) : void 0,
          bezierX: attrs["bezier-x"] ? parseFloat(attrs["bezier-x"]) : void 0,
          bezierY: attrs["bezier-y"] ? parseFloat(attrs["bezier-y"]) : void 0,
          bezierX2: attrs["bezier-x2"] ? parseFloat(attrs["bezier-x2"]) : void 0,
          bezierY2: attrs["bezier-y2"] ? parseFloat(attrs["bezier-y2"]) : void 0,
          placement: attrs["placement"],
          color: attrs["color"],
          notationsIndex
        };
        notations.push(slur);
      } else if (el.tagName === "tuplet") {
        const attrs = el.attributes;
        const tupletContent = el.children;
        const tuplet = {
          type: "tuplet",
          tupletType: attrs["type"] === "stop" ? "stop" : "start",
          number: attrs["number"] ? parseInt(attrs["number"], 10) : void 0,
          bracket: attrs["bracket"] === "yes" ? true : attrs["bracket"] === "no" ? false : void 0,
          showNumber: attrs["show-number"],
          showType: attrs["show-type"],
          lineShape: attrs["line-shape"],
          placement: attrs["placement"],
          notationsIndex
        };
        for (const tc of tupletContent) {
          if (typeof tc === "string") continue;
          if (tc.tagName === "tuplet-actual") {
            const actualContent = tc.children;
            const actual = {};
            const num = getElementText(actualContent, "tuplet-number");
            if (num) actual.tupletNumber = parseInt(num, 10);
            const type = getElementText(actualContent, "tuplet-type");
            if (type && isValidNoteType(type)) actual.tupletType = type;
            let dotCount = 0;
            for (const ac of actualContent) {
              if (typeof ac !== "string" && ac.tagName === "tuplet-dot") dotCount++;
            }
            if (dotCount > 0) actual.tupletDots = dotCount;
            if (Object.keys(actual).length > 0) tuplet.tupletActual = actual;
          } else if (tc.tagName === "tuplet-normal") {
            const normalContent = tc.children;
            const normal = {};
            const num = getElementText(normalContent, "tuplet-number");
            if (num) normal.tupletNumber = parseInt(num, 10);
            const type = getElementText(normalContent, "tuplet-type");
            if (type && isValidNoteType(type)) normal.tupletType = type;
            let dotCount = 0;
            for (const nc of normalContent) {
              if (typeof nc !== "string" && nc.tagName === "tuplet-dot") dotCount++;
            }
            if (dotCount > 0) normal.tupletDots = dotCount;
            if (Object.keys(normal).length > 0) tuplet.tupletNormal = normal;
          }
        }
        notations.push(tuplet);
      } else if (el.tagName === "articulations") {
        const artContent = el.children;
        const articulationTypes = [
          "accent",
          "strong-accent",
          "staccato",
          "staccatissimo",
          "tenuto",
          "detached-legato",
          "marcato",
          "spiccato",
          "scoop",
          "plop",
          "doit",
          "falloff",
          "breath-mark",
          "caesura",
          "stress",
          "unstress",
          "soft-accent"
        ];
        const currentArtIndex = articulationsIndex;
        articulationsIndex++;
        for (const art of artContent) {
          if (typeof art === "string") continue;
          for (const artType of articulationTypes) {
            if (art.tagName === artType) {
              const artAttrs = art.attributes;
              const artNotation = {
                type: "articulation",
                articulation: artType,
                placement: artAttrs["placement"],
                notationsIndex,
                articulationsIndex: currentArtIndex
              };
              if (artType === "strong-accent") {
                if (artAttrs["type"] === "up" || artAttrs["type"] === "down") {
                  artNotation.strongAccentType = artAttrs["type"];
                }
              }
              if (artAttrs["default-x"]) {
                artNotation.defaultX = parseFloat(artAttrs["default-x"]);
              }
              if (artAttrs["default-y"]) {
                artNotation.defaultY = parseFloat(artAttrs["default-y"]);
              }
              if (artAttrs["color"]) artNotation.color = artAttrs["color"];
              notations.push(artNotation);
            }
          }
        }
      } else if (el.tagName === "ornaments") {
        const ornContent = el.children;
        const simpleOrnamentTypes = [
          "trill-mark",
          "mordent",
          "inverted-mordent",
          "turn",
          "inverted-turn",
          "delayed-turn",
          "delayed-inverted-turn",
          "vertical-turn",
          "shake",
          "schleifer",
          "haydn"
        ];
        const accidentalMarks = collectElements(ornContent, "accidental-mark", (c, a) => {
          const value = extractText(c);
          return isValidAccidental(value) ? {
            value,
            placement: a["placement"],
            color: a["color"]
          } : null;
        }).filter((m) => m !== null);
        for (const orn of ornContent) {
          if (typeof orn === "string") continue;
          for (const ornType of simpleOrnamentTypes) {
            if (orn.tagName === ornType) {
              const ornAttrs = orn.attributes;
              const ornNotation = {
                type: "ornament",
                ornament: ornType,
                placement: ornAttrs["placement"],
                notationsIndex
              };
              if (ornAttrs["default-y"]) {
                ornNotation.defaultY = parseFloat(ornAttrs["default-y"]);
              }
              if (ornAttrs["color"]) ornNotation.color = ornAttrs["color"];
              if (accidentalMarks.length > 0 && notations.filter((n) => n.type === "ornament").length === 0) {
                ornNotation.accidentalMarks = accidentalMarks;
              }
              notations.push(ornNotation);
            }
          }
          if (orn.tagName === "wavy-line") {
            const wlAttrs = orn.attributes;
            const wlNotation = {
              type: "ornament",
              ornament: "wavy-line",
              wavyLineType: wlAttrs["type"],
              number: wlAttrs["number"] ? parseInt(wlAttrs["number"], 10) : void 0,
              placement: wlAttrs["placement"],
              notationsIndex
            };
            if (wlAttrs["default-y"]) {
              wlNotation.defaultY = parseFloat(wlAttrs["default-y"]);
            }
            if (wlAttrs["color"]) wlNotation.color = wlAttrs["color"];
            notations.push(wlNotation);
          }
          if (orn.tagName === "tremolo") {
            const tremAttrs = orn.attributes;
            const marks = extractText(orn.children);
            const tremNotation = {
              type: "ornament",
              ornament: "tremolo",
              tremoloMarks: marks ? parseInt(marks, 10) : void 0,
              tremoloType: tremAttrs["type"],
              placement: tremAttrs["placement"],
              notationsIndex
            };
            if (tremAttrs["default-x"]) tremNotation.defaultX = parseFloat(tremAttrs["default-x"]);
            if (tremAttrs["default-y"]) tremNotation.defaultY = parseFloat(tremAttrs["default-y"]);
            if (tremAttrs["color"]) tremNotation.color = tremAttrs["color"];
            notations.push(tremNotation);
          }
        }
        const ornamentNotationsAdded = notations.filter((n) => n.type === "ornament" && n.notationsIndex === notationsIndex);
        if (ornamentNotationsAdded.length === 0) {
          notations.push({
            type: "ornament",
            ornament: "empty",
            notationsIndex
          });
        }
      } else if (el.tagName === "technical") {
        const techContent = el.children;
        const technicalWithText = ["hammer-on", "pull-off", "tap", "pluck", "fingering", "other-technical"];
        const technicalTypes = [
          "up-bow",
          "down-bow",
          "harmonic",
          "open-string",
          "thumb-position",
          "fingering",
          "pluck",
          "double-tongue",
          "triple-tongue",
          "stopped",
          "snap-pizzicato",
          "fret",
          "string",
          "hammer-on",
          "pull-off",
          "tap",
          "heel",
          "toe",
          "fingernails",
          "hole",
          "arrow",
          "handbell",
          "brass-bend",
          "flip",
          "smear",
          "open",
          "half-muted",
          "harmon-mute",
          "golpe",
          "other-technical"
        ];
        for (const tech of techContent) {
          if (typeof tech === "string") continue;
          if (tech.tagName === "bend") {
            const bendContent = tech.children;
            const techAttrs = tech.attributes;
            const techNotation = {
              type: "technical",
              technical: "bend",
              placement: techAttrs["placement"],
              notationsIndex
            };
            const bendAlter = getElementText(bendContent, "bend-alter");
            if (bendAlter) techNotation.bendAlter = parseFloat(bendAlter);
            if (hasElement(bendContent, "pre-bend")) techNotation.preBend = true;
            if (hasElement(bendContent, "release")) techNotation.release = true;
            if (hasElement(bendContent, "with-bar")) techNotation.withBar = true;
            if (techAttrs["color"]) techNotation.color = techAttrs["color"];
            notations.push(techNotation);
          }
          for (const techType of technicalTypes) {
            if (tech.tagName === techType) {
              const techAttrs = tech.attributes;
              const notation = {
                type: "technical",
                technical: techType,
                placement: techAttrs["placement"],
                notationsIndex
              };
              const techElContent = tech.children;
              if (technicalWithText.includes(techType)) {
                const text = extractText(techElContent);
                if (text) notation.text = text;
              }
              if (techType === "string") {
                const text = extractText(techElContent);
                if (text) notation.string = parseInt(text, 10);
              }
              if (techType === "fret") {
                const text = extractText(techElContent);
                if (text) notation.fret = parseInt(text, 10);
              }
              if (techType === "harmonic") {
                if (hasElement(techElContent, "natural")) notation.harmonicNatural = true;
                if (hasElement(techElContent, "artificial")) notation.harmonicArtificial = true;
                if (hasElement(techElContent, "base-pitch")) notation.basePitch = true;
                if (hasElement(techElContent, "touching-pitch")) notation.touchingPitch = true;
                if (hasElement(techElContent, "sounding-pitch")) notation.soundingPitch = true;
              }
              if (techType === "hammer-on" || techType === "pull-off") {
                const typeAttr = techAttrs["type"];
                if (typeAttr === "start" || typeAttr === "stop") {
                  notation.startStop = typeAttr;
                }
                if (techAttrs["number"]) notation.number = parseInt(techAttrs["number"], 10);
              }
              if (techType === "fingering") {
                if (techAttrs["substitution"] === "yes") notation.fingeringSubstitution = true;
                if (techAttrs["alternate"] === "yes") notation.fingeringAlternate = true;
              }
              if (techType === "heel" || techType === "toe") {
                if (techAttrs["substitution"] === "yes") notation.substitution = true;
              }
              if (techAttrs["default-x"]) {
                notation.defaultX = parseFloat(techAttrs["default-x"]);
              }
              if (techAttrs["default-y"]) {
                notation.defaultY = parseFloat(techAttrs["default-y"]);
              }
              if (techAttrs["font-size"]) {
                notation.fontSize = techAttrs["font-size"];
              }
              if (techAttrs["color"]) {
                notation.color = techAttrs["color"];
              }
              notations.push(notation);
            }
          }
        }
      } else if (el.tagName === "dynamics") {
        const dynContent = el.children;
        const dynamicsValues = [];
        const allDynamics = [
          "pppppp",
          "ppppp",
          "pppp",
          "ppp",
          "pp",
          "p",
          "mp",
          "mf",
          "f",
          "ff",
          "fff",
          "ffff",
          "fffff",
          "ffffff",
          "sf",
          "sfz",
          "sffz",
          "sfp",
          "sfpp",
          "fp",
          "rf",
          "rfz",
          "fz",
          "n",
          "pf"
        ];
        let otherDynamics;
        for (const dyn of dynContent) {
          if (typeof dyn === "string") continue;
          for (const dv of allDynamics) {
            if (dyn.tagName === dv) dynamicsValues.push(dv);
          }
          const od = parseFirstElement([dyn], "other-dynamics", (c) => extractText(c));
          if (od) otherDynamics = od;
        }
        if (dynamicsValues.length > 0 || otherDynamics) {
          const dynAttrs = el.attributes;
          const dynNotation = {
            type: "dynamics",
            dynamics: dynamicsValues,
            placement: dynAttrs["placement"],
            notationsIndex
          };
          if (otherDynamics) dynNotation.otherDynamics = otherDynamics;
          if (dynAttrs["color"]) dynNotation.color = dynAttrs["color"];
          notations.push(dynNotation);
        }
      } else if (el.tagName === "fermata") {
        const a = el.attributes;
        const shape = extractText(el.children);
        const fermataNotation = {
          type: "fermata",
          shape: shape || void 0,
          fermataType: a["type"],
          placement: a["placement"],
          color: a["color"],
          notationsIndex
        };
        if (a["default-x"]) fermataNotation.defaultX = parseFloat(a["default-x"]);
        if (a["default-y"]) fermataNotation.defaultY = parseFloat(a["default-y"]);
        notations.push(fermataNotation);
      } else if (el.tagName === "arpeggiate") {
        const arpAttrs = el.attributes;
        const arpNotation = {
          type: "arpeggiate",
          direction: arpAttrs["direction"],
          number: arpAttrs["number"] ? parseInt(arpAttrs["number"], 10) : void 0,
          notationsIndex
        };
        if (arpAttrs["default-x"]) arpNotation.defaultX = parseFloat(arpAttrs["default-x"]);
        if (arpAttrs["default-y"]) arpNotation.defaultY = parseFloat(arpAttrs["default-y"]);
        if (arpAttrs["color"]) arpNotation.color = arpAttrs["color"];
        notations.push(arpNotation);
      } else if (el.tagName === "non-arpeggiate") {
        const nonArpAttrs = el.attributes;
        notations.push({
          type: "non-arpeggiate",
          nonArpeggiateType: nonArpAttrs["type"],
          number: nonArpAttrs["number"] ? parseInt(nonArpAttrs["number"], 10) : void 0,
          placement: nonArpAttrs["placement"],
          color: nonArpAttrs["color"],
          notationsIndex
        });
      } else if (el.tagName === "accidental-mark") {
        const amAttrs = el.attributes;
        const amContent = el.children;
        const value = extractText(amContent);
        notations.push({
          type: "accidental-mark",
          value,
          placement: amAttrs["placement"],
          color: amAttrs["color"],
          notationsIndex
        });
      } else if (el.tagName === "glissando") {
        const glissAttrs = el.attributes;
        const glissContent = el.children;
        let text;
        for (const item of glissContent) {
          if (typeof item === "string") {
            text = item.trim();
            break;
          }
        }
        notations.push({
          type: "glissando",
          glissandoType: glissAttrs["type"] === "stop" ? "stop" : "start",
          number: glissAttrs["number"] ? parseInt(glissAttrs["number"], 10) : void 0,
          lineType: glissAttrs["line-type"],
          text,
          color: glissAttrs["color"],
          notationsIndex
        });
      } else if (el.tagName === "slide") {
        const slideAttrs = el.attributes;
        const slideContent = el.children;
        const slideText = extractText(slideContent);
        const slideNotation = {
          type: "slide",
          slideType: slideAttrs["type"] === "stop" ? "stop" : "start",
          number: slideAttrs["number"] ? parseInt(slideAttrs["number"], 10) : void 0,
          lineType: slideAttrs["line-type"],
          color: slideAttrs["color"],
          notationsIndex
        };
        if (slideText) slideNotation.text = slideText;
        notations.push(slideNotation);
      }
    }
    return notations;
  }
  function parseLyric(elements, attrs) {
    const textElements = [];
    let hasElision = false;
    let currentSyllabic;
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "syllabic") {
        const content = el.children;
        for (const item of content) {
          if (typeof item === "string") {
            const syl = item.trim();
            if (syl === "single" || syl === "begin" || syl === "middle" || syl === "end") {
              currentSyllabic = syl;
            }
            break;
          }
        }
      } else if (el.tagName === "text") {
        const content = el.children;
        const textColor = el.attributes["color"];
        let foundText = false;
        for (const item of content) {
          if (typeof item === "string") {
            textElements.push({
              text: item,
              syllabic: currentSyllabic,
              color: textColor
            });
            currentSyllabic = void 0;
            foundText = true;
            break;
          }
        }
        if (!foundText) {
          textElements.push({
            text: "",
            syllabic: currentSyllabic,
            color: textColor
          });
          currentSyllabic = void 0;
        }
      } else if (el.tagName === "elision") {
        hasElision = true;
      }
    }
    const lyric = {
      text: textElements.length > 0 ? textElements[0].text : ""
    };
    if (attrs["number"]) {
      lyric.number = parseInt(attrs["number"], 10);
    }
    if (attrs["default-y"]) {
      lyric.defaultY = parseFloat(attrs["default-y"]);
    }
    if (attrs["name"]) {
      lyric.name = attrs["name"];
    }
    if (attrs["justify"]) {
      lyric.justify = attrs["justify"];
    }
    if (attrs["relative-x"]) {
      lyric.relativeX = parseFloat(attrs["relative-x"]);
    }
    if (attrs["placement"]) {
      lyric.placement = attrs["placement"];
    }
    if (attrs["color"]) {
      lyric.color = attrs["color"];
    }
    if (textElements.length > 0 && textElements[0].syllabic) {
      lyric.syllabic = textElements[0].syllabic;
    }
    if (textElements.length > 0 && textElements[0].color) {
      lyric.textColor = textElements[0].color;
    }
    if (textElements.length > 1) {
      lyric.textElements = textElements;
    }
    if (hasElision) {
      lyric.elision = true;
    }
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "extend") {
        const extendAttrs = el.attributes;
        const extendType = extendAttrs["type"];
        const extendColor = extendAttrs["color"];
        if (extendType || extendColor) {
          lyric.extend = { type: extendType, color: extendColor };
        } else {
          lyric.extend = true;
        }
      } else if (el.tagName === "end-line") {
        lyric.endLine = true;
      } else if (el.tagName === "end-paragraph") {
        lyric.endParagraph = true;
      }
    }
    return lyric;
  }
  function parseBackup(elements) {
    return {
      _id: generateId(),
      type: "backup",
      duration: parseInt(getElementText(elements, "duration") || "0", 10)
    };
  }
  function parseForward(elements, attrs = {}) {
    const forward = {
      _id: attrs["id"] || generateId(),
      type: "forward",
      duration: parseInt(getElementText(elements, "duration") || "0", 10)
    };
    const voice = getElementText(elements, "voice");
    if (voice) forward.voice = voice;
    const staff = getElementText(elements, "staff");
    if (staff) forward.staff = parseInt(staff, 10);
    return forward;
  }
  function parseDirection(elements, attrs) {
    const direction = {
      _id: attrs["id"] || generateId(),
      type: "direction",
      directionTypes: []
    };
    if (attrs["placement"] === "above" || attrs["placement"] === "below") {
      direction.placement = attrs["placement"];
    }
    if (attrs["directive"] === "yes") {
      direction.directive = true;
    }
    if (attrs["system"] === "only-top" || attrs["system"] === "also-top" || attrs["system"] === "none") {
      direction.system = attrs["system"];
    }
    const staff = getElementText(elements, "staff");
    if (staff) direction.staff = parseInt(staff, 10);
    const voice = getElementText(elements, "voice");
    if (voice) direction.voice = voice;
    parseFirstElement(elements, "offset", (c, a) => {
      const text = extractText(c);
      if (text) direction.offset = parseInt(text, 10);
      if (a["sound"] === "yes") direction.offsetSound = true;
    });
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "direction-type") {
        const parsedTypes = parseDirectionTypes(el.children);
        for (const parsed of parsedTypes) {
          direction.directionTypes.push(parsed);
        }
      }
    }
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "sound") {
        const soundAttrs = el.attributes;
        const soundContent = el.children;
        direction.sound = {};
        if (soundAttrs["tempo"]) direction.sound.tempo = parseFloat(soundAttrs["tempo"]);
        if (soundAttrs["dynamics"]) direction.sound.dynamics = parseFloat(soundAttrs["dynamics"]);
        if (soundAttrs["damper-pedal"]) direction.sound.damperPedal = soundAttrs["damper-pedal"];
        if (soundAttrs["soft-pedal"]) direction.sound.softPedal = soundAttrs["soft-pedal"];
        if (soundAttrs["sostenuto-pedal"]) direction.sound.sostenutoPedal = soundAttrs["sostenuto-pedal"];
        for (const soundEl of soundContent) {
          if (typeof soundEl === "string") continue;
          if (soundEl.tagName === "midi-instrument") {
            const midiAttrs = soundEl.attributes;
            const midiContent = soundEl.children;
            direction.sound.midiInstrument = {
              id: midiAttrs["id"] || ""
            };
            const midiProgram = getElementText(midiContent, "midi-program");
            if (midiProgram) direction.sound.midiInstrument.midiProgram = parseInt(midiProgram, 10);
            const midiChannel = getElementText(midiContent, "midi-channel");
            if (midiChannel) direction.sound.midiInstrument.midiChannel = parseInt(midiChannel, 10);
            const volume = getElementText(midiContent, "volume");
            if (volume) direction.sound.midiInstrument.volume = parseFloat(volume);
            const pan = getElementText(midiContent, "pan");
            if (pan) direction.sound.midiInstrument.pan = parseFloat(pan);
          }
        }
        break;
      }
    }
    return direction;
  }
  function parseDirectionTypes(elements) {
    const results = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "dynamics") {
        const dynAttrs = el.attributes;
        const dynContent = el.children;
        const dynamicsValues = [
          "pppppp",
          "ppppp",
          "pppp",
          "ppp",
          "pp",
          "p",
          "mp",
          "mf",
          "f",
          "ff",
          "fff",
          "ffff",
          "fffff",
          "ffffff",
          "sf",
          "sfz",
          "sffz",
          "sfp",
          "sfpp",
          "fp",
          "rf",
          "rfz",
          "fz",
          "n",
          "pf"
        ];
        for (const dyn of dynContent) {
          if (typeof dyn === "string") continue;
          let foundStandard = false;
          for (const dv of dynamicsValues) {
            if (dyn.tagName === dv) {
              const result = { kind: "dynamics", value: dv };
              if (dynAttrs["default-x"]) result.defaultX = parseFloat(dynAttrs["default-x"]);
              if (dynAttrs["default-y"]) result.defaultY = parseFloat(dynAttrs["default-y"]);
              if (dynAttrs["relative-x"]) result.relativeX = parseFloat(dynAttrs["relative-x"]);
              if (dynAttrs["halign"]) result.halign = dynAttrs["halign"];
              if (dynAttrs["color"]) result.color = dynAttrs["color"];
              results.push(result);
              foundStandard = true;
              break;
            }
          }
          if (!foundStandard && dyn.tagName === "other-dynamics") {
            const otherDynText = extractText(dyn.children);
            if (otherDynText) {
              const result = { kind: "dynamics", otherDynamics: otherDynText };
              if (dynAttrs["default-x"]) result.defaultX = parseFloat(dynAttrs["default-x"]);
              if (dynAttrs["default-y"]) result.defaultY = parseFloat(dynAttrs["default-y"]);
              if (dynAttrs["relative-x"]) result.relativeX = parseFloat(dynAttrs["relative-x"]);
              if (dynAttrs["halign"]) result.halign = dynAttrs["halign"];
              if (dynAttrs["color"]) result.color = dynAttrs["color"];
              results.push(result);
            }
          }
        }
        continue;
      }
      if (el.tagName === "wedge") {
        const wedgeAttrs = el.attributes;
        const wedgeType = wedgeAttrs["type"];
        if (wedgeType === "crescendo" || wedgeType === "diminuendo" || wedgeType === "stop") {
          const result = { kind: "wedge", type: wedgeType };
          if (wedgeAttrs["spread"]) result.spread = parseFloat(wedgeAttrs["spread"]);
          if (wedgeAttrs["default-y"]) result.defaultY = parseFloat(wedgeAttrs["default-y"]);
          if (wedgeAttrs["relative-x"]) result.relativeX = parseFloat(wedgeAttrs["relative-x"]);
          if (wedgeAttrs["color"]) result.color = wedgeAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "metronome") {
        const metAttrs = el.attributes;
        const metContent = el.children;
        const perMinute = getElementText(metContent, "per-minute");
        const beatUnits = [];
        const beatUnitDots = [];
        let dotForPrev = false;
        for (const met of metContent) {
          if (typeof met === "string") continue;
          if (met.tagName === "beat-unit") {
            const buContent = met.children;
            for (const item of buContent) {
              if (typeof item === "string") {
                beatUnits.push(item.trim());
                dotForPrev = true;
                break;
              }
            }
          } else if (met.tagName === "beat-unit-dot" && dotForPrev) {
            beatUnitDots[beatUnits.length - 1] = true;
          }
        }
        if (beatUnits.length > 0 && isValidNoteType(beatUnits[0])) {
          const result = {
            kind: "metronome",
            beatUnit: beatUnits[0]
          };
          if (perMinute) {
            result.perMinute = isNaN(parseInt(perMinute, 10)) ? perMinute : parseInt(perMinute, 10);
          }
          if (beatUnitDots[0]) result.beatUnitDot = true;
          if (beatUnits.length > 1 && isValidNoteType(beatUnits[1])) {
            result.beatUnit2 = beatUnits[1];
            if (beatUnitDots[1]) result.beatUnitDot2 = true;
          }
          if (metAttrs["parentheses"] === "yes") result.parentheses = true;
          if (metAttrs["print-object"] === "no") result.printObject = false;
          if (metAttrs["default-y"]) result.defaultY = parseFloat(metAttrs["default-y"]);
          if (metAttrs["font-family"]) result.fontFamily = metAttrs["font-family"];
          if (metAttrs["font-size"]) result.fontSize = metAttrs["font-size"];
          if (metAttrs["color"]) result.color = metAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "words") {
        const a = el.attributes;
        const text = extractText(el.children, true);
        const result = { kind: "words", text: text || "" };
        if (a["default-x"]) result.defaultX = parseFloat(a["default-x"]);
        if (a["default-y"]) result.defaultY = parseFloat(a["default-y"]);
        if (a["relative-x"]) result.relativeX = parseFloat(a["relative-x"]);
        if (a["relative-y"]) result.relativeY = parseFloat(a["relative-y"]);
        if (a["font-family"]) result.fontFamily = a["font-family"];
        if (a["font-size"]) result.fontSize = a["font-size"];
        if (a["font-style"]) result.fontStyle = a["font-style"];
        if (a["font-weight"]) result.fontWeight = a["font-weight"];
        if (a["xml:lang"]) result.xmlLang = a["xml:lang"];
        if (a["justify"]) result.justify = a["justify"];
        if (a["color"]) result.color = a["color"];
        if (a["xml:space"]) result.xmlSpace = a["xml:space"];
        if (a["halign"]) result.halign = a["halign"];
        results.push(result);
        continue;
      }
      if (el.tagName === "rehearsal") {
        const a = el.attributes;
        const text = extractText(el.children);
        if (text) {
          const result = { kind: "rehearsal", text };
          if (a["enclosure"]) result.enclosure = a["enclosure"];
          if (a["default-x"]) result.defaultX = parseFloat(a["default-x"]);
          if (a["default-y"]) result.defaultY = parseFloat(a["default-y"]);
          if (a["font-size"]) result.fontSize = a["font-size"];
          if (a["font-weight"]) result.fontWeight = a["font-weight"];
          if (a["color"]) result.color = a["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "bracket") {
        const bracketAttrs = el.attributes;
        const bracketType = bracketAttrs["type"];
        if (bracketType === "start" || bracketType === "stop" || bracketType === "continue") {
          const result = { kind: "bracket", type: bracketType };
          if (bracketAttrs["number"]) result.number = parseInt(bracketAttrs["number"], 10);
          if (bracketAttrs["line-end"]) result.lineEnd = bracketAttrs["line-end"];
          if (bracketAttrs["line-type"]) result.lineType = bracketAttrs["line-type"];
          if (bracketAttrs["default-y"]) result.defaultY = parseFloat(bracketAttrs["default-y"]);
          if (bracketAttrs["relative-x"]) result.relativeX = parseFloat(bracketAttrs["relative-x"]);
          if (bracketAttrs["color"]) result.color = bracketAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "dashes") {
        const dashAttrs = el.attributes;
        const dashType = dashAttrs["type"];
        if (dashType === "start" || dashType === "stop" || dashType === "continue") {
          const result = { kind: "dashes", type: dashType };
          if (dashAttrs["number"]) result.number = parseInt(dashAttrs["number"], 10);
          if (dashAttrs["dash-length"]) result.dashLength = parseFloat(dashAttrs["dash-length"]);
          if (dashAttrs["default-y"]) result.defaultY = parseFloat(dashAttrs["default-y"]);
          if (dashAttrs["space-length"]) result.spaceLength = parseFloat(dashAttrs["space-length"]);
          if (dashAttrs["color"]) result.color = dashAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "accordion-registration") {
        const accContent = el.children;
        const accRegAttrs = el.attributes;
        const result = { kind: "accordion-registration" };
        if (accRegAttrs["color"]) result.color = accRegAttrs["color"];
        for (const acc of accContent) {
          if (typeof acc === "string") continue;
          if (acc.tagName === "accordion-high") {
            result.high = true;
          } else if (acc.tagName === "accordion-middle") {
            result.middlePresent = true;
            const midContent = acc.children;
            for (const item of midContent) {
              if (typeof item === "string") {
                const textValue = item;
                const numValue = parseInt(textValue, 10);
                result.middle = !isNaN(numValue) ? numValue : textValue;
                break;
              }
            }
          } else if (acc.tagName === "accordion-low") {
            result.low = true;
          }
        }
        results.push(result);
        continue;
      }
      if (el.tagName === "other-direction") {
        const otherAttrs = el.attributes;
        const otherContent = el.children;
        for (const o of otherContent) {
          if (typeof o === "string") {
            const result = { kind: "other-direction", text: o.trim() };
            if (otherAttrs["default-x"]) result.defaultX = parseFloat(otherAttrs["default-x"]);
            if (otherAttrs["default-y"]) result.defaultY = parseFloat(otherAttrs["default-y"]);
            if (otherAttrs["halign"]) result.halign = otherAttrs["halign"];
            if (otherAttrs["print-object"] === "no") result.printObject = false;
            if (otherAttrs["color"]) result.color = otherAttrs["color"];
            results.push(result);
            break;
          }
        }
        continue;
      }
      if (el.tagName === "segno" || el.tagName === "coda" || el.tagName === "eyeglasses" || el.tagName === "damp" || el.tagName === "damp-all") {
        const markerColor = el.attributes["color"];
        const result = { kind: el.tagName };
        if (markerColor) result.color = markerColor;
        results.push(result);
        continue;
      }
      if (el.tagName === "scordatura") {
        const scordContent = el.children;
        const scordColor = el.attributes["color"];
        const accords = [];
        for (const sc of scordContent) {
          if (typeof sc === "string") continue;
          if (sc.tagName === "accord") {
            const accAttrs = sc.attributes;
            const accContent = sc.children;
            const tuningStep = getElementText(accContent, "tuning-step");
            const tuningOctave = getElementText(accContent, "tuning-octave");
            const tuningAlter = getElementText(accContent, "tuning-alter");
            if (tuningStep && tuningOctave) {
              const accord = {
                string: parseInt(accAttrs["string"] || "1", 10),
                tuningStep,
                tuningOctave: parseInt(tuningOctave, 10)
              };
              if (tuningAlter) accord.tuningAlter = parseFloat(tuningAlter);
              accords.push(accord);
            }
          }
        }
        results.push({ kind: "scordatura", accords: accords.length > 0 ? accords : void 0, color: scordColor });
        continue;
      }
      if (el.tagName === "harp-pedals") {
        const harpContent = el.children;
        const harpColor = el.attributes["color"];
        const pedalTunings = [];
        for (const hp of harpContent) {
          if (typeof hp === "string") continue;
          if (hp.tagName === "pedal-tuning") {
            const ptContent = hp.children;
            const pedalStep = getElementText(ptContent, "pedal-step");
            const pedalAlter = getElementText(ptContent, "pedal-alter");
            if (pedalStep) {
              pedalTunings.push({
                pedalStep,
                pedalAlter: pedalAlter ? parseFloat(pedalAlter) : 0
              });
            }
          }
        }
        results.push({ kind: "harp-pedals", pedalTunings: pedalTunings.length > 0 ? pedalTunings : void 0, color: harpColor });
        continue;
      }
      if (el.tagName === "image") {
        const imgAttrs = el.attributes;
        results.push({
          kind: "image",
          source: imgAttrs["source"],
          type: imgAttrs["type"]
        });
        continue;
      }
      if (el.tagName === "pedal") {
        const pedalAttrs = el.attributes;
        const pedalType = pedalAttrs["type"];
        if (pedalType === "start" || pedalType === "stop" || pedalType === "change" || pedalType === "continue") {
          const result = { kind: "pedal", type: pedalType };
          if (pedalAttrs["line"] === "yes") result.line = true;
          else if (pedalAttrs["line"] === "no") result.line = false;
          if (pedalAttrs["default-y"]) result.defaultY = parseFloat(pedalAttrs["default-y"]);
          if (pedalAttrs["relative-x"]) result.relativeX = parseFloat(pedalAttrs["relative-x"]);
          if (pedalAttrs["halign"]) result.halign = pedalAttrs["halign"];
          if (pedalAttrs["color"]) result.color = pedalAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "octave-shift") {
        const shiftAttrs = el.attributes;
        const shiftType = shiftAttrs["type"];
        if (shiftType === "up" || shiftType === "down" || shiftType === "stop") {
          const result = { kind: "octave-shift", type: shiftType };
          if (shiftAttrs["size"]) result.size = parseInt(shiftAttrs["size"], 10);
          if (shiftAttrs["color"]) result.color = shiftAttrs["color"];
          results.push(result);
        }
        continue;
      }
      if (el.tagName === "swing") {
        const swingContent = el.children;
        const result = { kind: "swing" };
        for (const sw of swingContent) {
          if (typeof sw === "string") continue;
          if (sw.tagName === "straight") {
            result.straight = true;
          } else if (sw.tagName === "first") {
            const firstContent = sw.children;
            for (const item of firstContent) {
              if (typeof item === "string") {
                result.first = parseInt(item, 10);
                break;
              }
            }
          } else if (sw.tagName === "second") {
            const secondContent = sw.children;
            for (const item of secondContent) {
              if (typeof item === "string") {
                result.second = parseInt(item, 10);
                break;
              }
            }
          } else if (sw.tagName === "swing-type") {
            const stContent = sw.children;
            for (const item of stContent) {
              if (typeof item === "string" && isValidNoteType(item.trim())) {
                result.swingType = item.trim();
                break;
              }
            }
          }
        }
        results.push(result);
        continue;
      }
    }
    return results;
  }
  function parseBarline(elements, attrs) {
    const location = attrs["location"] || "right";
    const barline = { _id: attrs["id"] || generateId(), location };
    parseFirstElement(elements, "bar-style", (c, a) => {
      const barStyle = extractText(c);
      if (barStyle && isValidBarStyle(barStyle)) {
        barline.barStyle = barStyle;
        if (a["color"]) barline.barStyleColor = a["color"];
      }
    });
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "repeat") {
        const repeatAttrs = el.attributes;
        const direction = repeatAttrs["direction"];
        if (direction === "forward" || direction === "backward") {
          barline.repeat = { direction };
          if (repeatAttrs["times"]) {
            barline.repeat.times = parseInt(repeatAttrs["times"], 10);
          }
          if (repeatAttrs["winged"]) {
            barline.repeat.winged = repeatAttrs["winged"];
          }
        }
      } else if (el.tagName === "ending") {
        const endingAttrs = el.attributes;
        const number = endingAttrs["number"];
        const type = endingAttrs["type"];
        if (number && (type === "start" || type === "stop" || type === "discontinue")) {
          barline.ending = { number, type };
          const endingContent = el.children;
          const endingText = extractText(endingContent);
          if (endingText) barline.ending.text = endingText;
          if (endingAttrs["default-y"]) barline.ending.defaultY = parseFloat(endingAttrs["default-y"]);
          if (endingAttrs["end-length"]) barline.ending.endLength = parseFloat(endingAttrs["end-length"]);
          if (endingAttrs["color"]) barline.ending.color = endingAttrs["color"];
        }
      }
    }
    return barline;
  }
  var VALID_NOTE_TYPES = /* @__PURE__ */ new Set([
    "maxima",
    "long",
    "breve",
    "whole",
    "half",
    "quarter",
    "eighth",
    "16th",
    "32nd",
    "64th",
    "128th",
    "256th",
    "512th",
    "1024th"
  ]);
  var VALID_ACCIDENTALS = /* @__PURE__ */ new Set([
    "sharp",
    "natural",
    "flat",
    "double-sharp",
    "double-flat",
    "sharp-sharp",
    "flat-flat",
    "natural-sharp",
    "natural-flat",
    "quarter-flat",
    "quarter-sharp",
    "three-quarters-flat",
    "three-quarters-sharp",
    "sharp-down",
    "sharp-up",
    "natural-down",
    "natural-up",
    "flat-down",
    "flat-up",
    "double-sharp-down",
    "double-sharp-up",
    "flat-flat-down",
    "flat-flat-up",
    "arrow-down",
    "arrow-up",
    "triple-sharp",
    "triple-flat",
    "slash-quarter-sharp",
    "slash-sharp",
    "slash-flat",
    "double-slash-flat",
    "sharp-1",
    "sharp-2",
    "sharp-3",
    "sharp-5",
    "flat-1",
    "flat-2",
    "flat-3",
    "flat-4",
    "sori",
    "koron",
    "other"
  ]);
  var VALID_NOTEHEADS = /* @__PURE__ */ new Set([
    "slash",
    "triangle",
    "diamond",
    "square",
    "cross",
    "x",
    "circle-x",
    "inverted triangle",
    "arrow down",
    "arrow up",
    "circled",
    "slashed",
    "back slashed",
    "normal",
    "cluster",
    "circle dot",
    "left triangle",
    "rectangle",
    "none",
    "do",
    "re",
    "mi",
    "fa",
    "fa up",
    "so",
    "la",
    "ti",
    "other"
  ]);
  var VALID_BAR_STYLES = /* @__PURE__ */ new Set([
    "regular",
    "dotted",
    "dashed",
    "heavy",
    "light-light",
    "light-heavy",
    "heavy-light",
    "heavy-heavy",
    "tick",
    "short",
    "none"
  ]);
  function isValidNoteType(value) {
    return VALID_NOTE_TYPES.has(value);
  }
  function isValidAccidental(value) {
    return VALID_ACCIDENTALS.has(value);
  }
  function isValidNotehead(value) {
    return VALID_NOTEHEADS.has(value);
  }
  function isValidBarStyle(value) {
    return VALID_BAR_STYLES.has(value);
  }
  function parseStaffDetails(elements, attrs) {
    const sd = {};
    if (attrs["number"]) sd.number = parseInt(attrs["number"], 10);
    if (attrs["print-object"] === "no") sd.printObject = false;
    else if (attrs["print-object"] === "yes") sd.printObject = true;
    if (attrs["print-spacing"] === "yes") sd.printSpacing = true;
    else if (attrs["print-spacing"] === "no") sd.printSpacing = false;
    const staffType = getElementText(elements, "staff-type");
    if (staffType && ["ossia", "cue", "editorial", "regular", "alternate"].includes(staffType)) {
      sd.staffType = staffType;
    }
    const staffLines = getElementText(elements, "staff-lines");
    if (staffLines) sd.staffLines = parseInt(staffLines, 10);
    const capo = getElementText(elements, "capo");
    if (capo) sd.capo = parseInt(capo, 10);
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "staff-size") {
        const sizeContent = el.children;
        const sizeAttrs = el.attributes;
        for (const item of sizeContent) {
          if (typeof item === "string") {
            sd.staffSize = parseFloat(item);
            break;
          }
        }
        if (sizeAttrs["scaling"]) {
          sd.staffSizeScaling = parseFloat(sizeAttrs["scaling"]);
        }
        break;
      }
    }
    if (attrs["show-frets"] === "numbers" || attrs["show-frets"] === "letters") {
      sd.showFrets = attrs["show-frets"];
    }
    const tunings = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "staff-tuning") {
        const tuningAttrs = el.attributes;
        const tuningContent = el.children;
        const tuning = {
          line: parseInt(tuningAttrs["line"] || "1", 10),
          tuningStep: getElementText(tuningContent, "tuning-step") || "E",
          tuningOctave: parseInt(getElementText(tuningContent, "tuning-octave") || "4", 10)
        };
        const tuningAlter = getElementText(tuningContent, "tuning-alter");
        if (tuningAlter) tuning.tuningAlter = parseFloat(tuningAlter);
        tunings.push(tuning);
      }
    }
    if (tunings.length > 0) sd.staffTuning = tunings;
    return sd;
  }
  function parseMeasureStyle(elements, attrs) {
    const ms = {};
    if (attrs["number"]) ms.number = parseInt(attrs["number"], 10);
    if (attrs["color"]) ms.color = attrs["color"];
    const multipleRest = getElementText(elements, "multiple-rest");
    if (multipleRest) ms.multipleRest = parseInt(multipleRest, 10);
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "measure-repeat") {
        const mrAttrs = el.attributes;
        ms.measureRepeat = { type: mrAttrs["type"] === "stop" ? "stop" : "start" };
        if (mrAttrs["slashes"]) ms.measureRepeat.slashes = parseInt(mrAttrs["slashes"], 10);
      } else if (el.tagName === "beat-repeat") {
        const brAttrs = el.attributes;
        ms.beatRepeat = { type: brAttrs["type"] === "stop" ? "stop" : "start" };
        if (brAttrs["slashes"]) ms.beatRepeat.slashes = parseInt(brAttrs["slashes"], 10);
      } else if (el.tagName === "slash") {
        const slAttrs = el.attributes;
        ms.slash = { type: slAttrs["type"] === "stop" ? "stop" : "start" };
        if (slAttrs["use-dots"] === "yes") ms.slash.useDots = true;
        else if (slAttrs["use-dots"] === "no") ms.slash.useDots = false;
        if (slAttrs["use-stems"] === "yes") ms.slash.useStems = true;
        else if (slAttrs["use-stems"] === "no") ms.slash.useStems = false;
      }
    }
    return ms;
  }
  function parseHarmony(elements, attrs) {
    const harmony = {
      _id: attrs["id"] || generateId(),
      type: "harmony",
      root: { rootStep: "C" },
      kind: "major"
    };
    if (attrs["placement"] === "above" || attrs["placement"] === "below") {
      harmony.placement = attrs["placement"];
    }
    if (attrs["print-frame"] === "yes") {
      harmony.printFrame = true;
    } else if (attrs["print-frame"] === "no") {
      harmony.printFrame = false;
    }
    if (attrs["default-y"]) harmony.defaultY = parseFloat(attrs["default-y"]);
    if (attrs["halign"]) harmony.halign = attrs["halign"];
    if (attrs["font-size"]) harmony.fontSize = attrs["font-size"];
    if (attrs["color"]) harmony.color = attrs["color"];
    const root = getElementContent(elements, "root");
    if (root) {
      const rootStep = getElementText(root, "root-step");
      if (rootStep) harmony.root.rootStep = rootStep;
      const rootAlter = getElementText(root, "root-alter");
      if (rootAlter) harmony.root.rootAlter = parseFloat(rootAlter);
    }
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "kind") {
        const kindAttrs = el.attributes;
        const kindContent = el.children;
        for (const item of kindContent) {
          if (typeof item === "string") {
            harmony.kind = item.trim();
            break;
          }
        }
        if (kindAttrs["text"] !== void 0) harmony.kindText = kindAttrs["text"];
        if (kindAttrs["halign"]) harmony.kindHalign = kindAttrs["halign"];
        if (kindAttrs["color"]) harmony.kindColor = kindAttrs["color"];
        break;
      }
    }
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "bass") {
        const bassAttrs = el.attributes;
        const bassContent = el.children;
        const bassStep = getElementText(bassContent, "bass-step");
        if (bassStep) {
          harmony.bass = { bassStep };
          const bassAlter = getElementText(bassContent, "bass-alter");
          if (bassAlter) harmony.bass.bassAlter = parseFloat(bassAlter);
          if (bassAttrs["arrangement"]) harmony.bass.arrangement = bassAttrs["arrangement"];
        }
        break;
      }
    }
    const inversionText = getElementText(elements, "inversion");
    if (inversionText) {
      harmony.inversion = parseInt(inversionText, 10);
    }
    const degrees = [];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "degree") {
        const degContent = el.children;
        const degValue = getElementText(degContent, "degree-value");
        const degAlter = getElementText(degContent, "degree-alter");
        const degType = getElementText(degContent, "degree-type");
        if (degValue && degType && ["add", "alter", "subtract"].includes(degType)) {
          const degree = {
            degreeValue: parseInt(degValue, 10),
            degreeType: degType
          };
          if (degAlter) degree.degreeAlter = parseFloat(degAlter);
          degrees.push(degree);
        }
      }
    }
    if (degrees.length > 0) harmony.degrees = degrees;
    const frame = getElementContent(elements, "frame");
    if (frame) {
      const frameObj = {};
      const frameStrings = getElementText(frame, "frame-strings");
      if (frameStrings) frameObj.frameStrings = parseInt(frameStrings, 10);
      const frameFrets = getElementText(frame, "frame-frets");
      if (frameFrets) frameObj.frameFrets = parseInt(frameFrets, 10);
      for (const fel of frame) {
        if (typeof fel === "string") continue;
        if (fel.tagName === "first-fret") {
          const ffAttrs = fel.attributes;
          const ffContent = fel.children;
          for (const item of ffContent) {
            if (typeof item === "string") {
              frameObj.firstFret = parseInt(item, 10);
              break;
            }
          }
          if (ffAttrs["text"]) frameObj.firstFretText = ffAttrs["text"];
          if (ffAttrs["location"] === "left" || ffAttrs["location"] === "right") {
            frameObj.firstFretLocation = ffAttrs["location"];
          }
          break;
        }
      }
      const frameNotes = [];
      for (const fel of frame) {
        if (typeof fel === "string") continue;
        if (fel.tagName === "frame-note") {
          const fnContent = fel.children;
          const stringNum = getElementText(fnContent, "string");
          const fretNum = getElementText(fnContent, "fret");
          if (stringNum && fretNum) {
            const fn = {
              string: parseInt(stringNum, 10),
              fret: parseInt(fretNum, 10)
            };
            const fingering = getElementText(fnContent, "fingering");
            if (fingering) fn.fingering = fingering;
            for (const fnEl of fnContent) {
              if (typeof fnEl === "string") continue;
              if (fnEl.tagName === "barre") {
                const barreAttrs = fnEl.attributes;
                if (barreAttrs["type"] === "start" || barreAttrs["type"] === "stop") {
                  fn.barre = barreAttrs["type"];
                }
              }
            }
            frameNotes.push(fn);
          }
        }
      }
      if (frameNotes.length > 0) frameObj.frameNotes = frameNotes;
      const frameColor = parseFirstElement(elements, "frame", (_c, a) => a["color"]);
      if (frameColor) frameObj.color = frameColor;
      if (Object.keys(frameObj).length > 0) harmony.frame = frameObj;
    }
    const offset = getElementText(elements, "offset");
    if (offset) harmony.offset = parseInt(offset, 10);
    const staff = getElementText(elements, "staff");
    if (staff) harmony.staff = parseInt(staff, 10);
    return harmony;
  }
  function parseFiguredBass(elements, attrs) {
    const fb = {
      _id: attrs["id"] || generateId(),
      type: "figured-bass",
      figures: []
    };
    if (attrs["parentheses"] === "yes") fb.parentheses = true;
    if (attrs["color"]) fb.color = attrs["color"];
    const duration = getElementText(elements, "duration");
    if (duration) fb.duration = parseInt(duration, 10);
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "figure") {
        const figContent = el.children;
        const figure = {};
        const figNumber = getElementText(figContent, "figure-number");
        if (figNumber) figure.figureNumber = figNumber;
        for (const figEl of figContent) {
          if (typeof figEl === "string") continue;
          if (figEl.tagName === "prefix") {
            const prefixContent = figEl.children;
            for (const item of prefixContent) {
              if (typeof item === "string") {
                figure.prefix = item.trim();
                break;
              }
            }
          } else if (figEl.tagName === "suffix") {
            const suffixContent = figEl.children;
            for (const item of suffixContent) {
              if (typeof item === "string") {
                figure.suffix = item.trim();
                break;
              }
            }
          } else if (figEl.tagName === "extend") {
            const extendAttrs = figEl.attributes;
            const extendType = extendAttrs["type"];
            const extendColor = extendAttrs["color"];
            if (extendType || extendColor) {
              figure.extend = { type: extendType, color: extendColor };
            } else {
              figure.extend = true;
            }
          }
        }
        fb.figures.push(figure);
      }
    }
    return fb;
  }
  function parseSound(elements, attrs) {
    const sound = {
      _id: attrs["id"] || generateId(),
      type: "sound"
    };
    if (attrs["tempo"]) sound.tempo = parseFloat(attrs["tempo"]);
    if (attrs["dynamics"]) sound.dynamics = parseFloat(attrs["dynamics"]);
    if (attrs["dacapo"] === "yes") sound.dacapo = true;
    if (attrs["segno"]) sound.segno = attrs["segno"];
    if (attrs["dalsegno"]) sound.dalsegno = attrs["dalsegno"];
    if (attrs["coda"]) sound.coda = attrs["coda"];
    if (attrs["tocoda"]) sound.tocoda = attrs["tocoda"];
    if (attrs["fine"] === "yes") sound.fine = true;
    if (attrs["forward-repeat"] === "yes") sound.forwardRepeat = true;
    if (attrs["damper-pedal"]) sound.damperPedal = attrs["damper-pedal"];
    if (attrs["soft-pedal"]) sound.softPedal = attrs["soft-pedal"];
    if (attrs["sostenuto-pedal"]) sound.sostenutoPedal = attrs["sostenuto-pedal"];
    for (const el of elements) {
      if (typeof el === "string") continue;
      if (el.tagName === "swing") {
        const swingContent = el.children;
        const swing = {};
        for (const swingEl of swingContent) {
          if (typeof swingEl === "string") continue;
          if (swingEl.tagName === "straight") {
            swing.straight = true;
          } else if (swingEl.tagName === "first") {
            const firstContent = swingEl.children;
            for (const item of firstContent) {
              if (typeof item === "string") {
                swing.first = parseInt(item, 10);
                break;
              }
            }
          } else if (swingEl.tagName === "second") {
            const secondContent = swingEl.children;
            for (const item of secondContent) {
              if (typeof item === "string") {
                swing.second = parseInt(item, 10);
                break;
              }
            }
          } else if (swingEl.tagName === "swing-type") {
            const typeContent = swingEl.children;
            for (const item of typeContent) {
              if (typeof item === "string") {
                swing.swingType = item.trim();
                break;
              }
            }
          }
        }
        if (Object.keys(swing).length > 0) {
          sound.swing = swing;
        }
      }
    }
    return sound;
  }
  var DECORATIONS = [
    // --- Articulations ---------------------------------------------------
    { spellings: [".", "staccato"], canonical: ".", target: { kind: "articulation", articulation: "staccato" } },
    { spellings: ["L", "accent", "emphasis", ">"], canonical: "L", target: { kind: "articulation", articulation: "accent" } },
    { spellings: ["marcato"], canonical: "!marcato!", target: { kind: "articulation", articulation: "strong-accent" } },
    { spellings: ["tenuto"], canonical: "!tenuto!", target: { kind: "articulation", articulation: "tenuto" } },
    { spellings: ["breath"], canonical: "!breath!", target: { kind: "articulation", articulation: "breath-mark" } },
    // --- Ornaments -------------------------------------------------------
    { spellings: ["T", "trill"], canonical: "T", target: { kind: "ornament", ornament: "trill-mark" } },
    { spellings: ["M", "lowermordent", "mordent"], canonical: "M", target: { kind: "ornament", ornament: "mordent" } },
    { spellings: ["P", "uppermordent", "pralltriller"], canonical: "P", target: { kind: "ornament", ornament: "inverted-mordent" } },
    { spellings: ["turn", "gruppetto"], canonical: "!turn!", target: { kind: "ornament", ornament: "turn" } },
    { spellings: ["invertedturn"], canonical: "!invertedturn!", target: { kind: "ornament", ornament: "inverted-turn" } },
    { spellings: ["trill("], canonical: "!trill(!", target: { kind: "trill-line", wavyLineType: "start" } },
    { spellings: ["trill)"], canonical: "!trill)!", target: { kind: "trill-line", wavyLineType: "stop" } },
    { spellings: ["arpeggio"], canonical: "!arpeggio!", target: { kind: "arpeggiate" } },
    // --- Technical -------------------------------------------------------
    { spellings: ["u", "upbow"], canonical: "u", target: { kind: "technical", technical: "up-bow" } },
    { spellings: ["v", "downbow"], canonical: "v", target: { kind: "technical", technical: "down-bow" } },
    { spellings: ["open"], canonical: "!open!", target: { kind: "technical", technical: "open-string" } },
    { spellings: ["thumb"], canonical: "!thumb!", target: { kind: "technical", technical: "thumb-position" } },
    { spellings: ["snap"], canonical: "!snap!", target: { kind: "technical", technical: "snap-pizzicato" } },
    { spellings: ["+", "plus"], canonical: "!plus!", target: { kind: "technical", technical: "stopped" } },
    // --- Fermatas --------------------------------------------------------
    { spellings: ["H", "fermata"], canonical: "H", target: { kind: "fermata" } },
    { spellings: ["invertedfermata"], canonical: "!invertedfermata!", target: { kind: "fermata", inverted: true } },
    // --- Wedges (hairpins) -----------------------------------------------
    { spellings: ["crescendo(", "<("], canonical: "!crescendo(!", target: { kind: "wedge", wedge: "crescendo", stop: false } },
    { spellings: ["crescendo)", "<)"], canonical: "!crescendo)!", target: { kind: "wedge", wedge: "crescendo", stop: true } },
    { spellings: ["diminuendo(", ">("], canonical: "!diminuendo(!", target: { kind: "wedge", wedge: "diminuendo", stop: false } },
    { spellings: ["diminuendo)", ">)"], canonical: "!diminuendo)!", target: { kind: "wedge", wedge: "diminuendo", stop: true } },
    // --- Navigation marks ------------------------------------------------
    { spellings: ["S", "segno"], canonical: "S", target: { kind: "segno" } },
    { spellings: ["O", "coda"], canonical: "O", target: { kind: "coda" } },
    { spellings: ["D.S."], canonical: "!D.S.!", target: { kind: "words", text: "D.S." } },
    { spellings: ["D.C."], canonical: "!D.C.!", target: { kind: "words", text: "D.C." } },
    { spellings: ["dacoda"], canonical: "!dacoda!", target: { kind: "words", text: "Da Coda" } },
    { spellings: ["dacapo"], canonical: "!dacapo!", target: { kind: "words", text: "Da Capo" } },
    { spellings: ["fine"], canonical: "!fine!", target: { kind: "words", text: "Fine" } }
  ];
  for (let n = 0; n <= 5; n++) {
    DECORATIONS.push({
      spellings: [String(n)],
      canonical: `!${n}!`,
      target: { kind: "fingering", fingering: String(n) }
    });
  }
  var BY_SPELLING = /* @__PURE__ */ new Map();
  for (const def of DECORATIONS) {
    for (const spelling of def.spellings) {
      BY_SPELLING.set(spelling, def);
    }
  }
  function targetKey(target) {
    switch (target.kind) {
      case "articulation":
        return `articulation:${target.articulation}`;
      case "ornament":
        return `ornament:${target.ornament}`;
      case "technical":
        return `technical:${target.technical}`;
      case "fingering":
        return `fingering:${target.fingering}`;
      case "fermata":
        return `fermata:${target.inverted ? "inverted" : "upright"}`;
      case "arpeggiate":
        return "arpeggiate";
      case "trill-line":
        return `trill-line:${target.wavyLineType}`;
      case "dynamics":
        return `dynamics:${target.value}`;
      case "wedge":
        return `wedge:${target.wedge}:${target.stop ? "stop" : "start"}`;
      case "segno":
        return "segno";
      case "coda":
        return "coda";
      case "words":
        return `words:${target.text}`;
    }
  }
  var CANONICAL_BY_TARGET = /* @__PURE__ */ new Map();
  for (const def of DECORATIONS) {
    CANONICAL_BY_TARGET.set(targetKey(def.target), def.canonical);
  }
  var NOTE_TYPE_MAP = {
    // duration in terms of quarter notes
    16: "long",
    8: "breve",
    4: "whole",
    2: "half",
    1: "quarter",
    0.5: "eighth",
    0.25: "16th",
    0.125: "32nd",
    0.0625: "64th"
  };
  var NOTE_TYPE_ENTRIES = Object.entries(NOTE_TYPE_MAP).map(([quarterNotes, type]) => [parseFloat(quarterNotes), type]);
  return __toCommonJS(entry_exports);
})();
