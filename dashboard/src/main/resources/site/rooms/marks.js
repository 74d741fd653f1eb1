// What happened in a room, ready to be drawn on the axis of time and to be said in words.
import { farmMoment } from '../lib/units.js';
import { words } from './words.js';

const text = words.room;

/**
 * Marks in time order. Lots that move together at one moment are one mark.
 * @param {object} happened the answer of `/api/rooms/{room}/marks`
 * @param {string} zone the farm's
 * @returns {{ kind: 'alarm' | 'in' | 'out', fromMs: number, toMs: number, wakes: boolean,
 *   lots: string[], sentence: string }[]}
 */
export function marksOf({ alarms, moves, to }, zone) {
  const groups = new Map();
  moves.forEach((move) => {
    const key = `${move.at} ${move.isIn} ${move.place}`;
    groups.set(key, [...(groups.get(key) ?? []), move]);
  });
  return [
    ...alarms.map((alarm) => alarmMark(alarm, Date.parse(to), zone)),
    ...[...groups.values()].map(moveMark),
  ].sort((a, b) => a.fromMs - b.fromMs);
}

/** The marks at a moment, or as near to it as a fingertip is wide, the nearest to begin first. */
export const marksAt = (marks, ms, slackMs) =>
  marks
    .filter(({ fromMs, toMs }) => fromMs - slackMs <= ms && ms <= toMs + slackMs)
    .sort((a, b) => Math.abs(a.fromMs - ms) - Math.abs(b.fromMs - ms));

function alarmMark({ name, room, thing, wakes, began, over }, endMs, zone) {
  const what = [name, room === null ? text.wholeShed : '', thing ?? ''].filter(Boolean).join(', ');
  return {
    kind: 'alarm',
    fromMs: Date.parse(began),
    toMs: over === null ? endMs : Date.parse(over),
    wakes,
    lots: [],
    sentence:
      over === null
        ? text.lasts(what, farmMoment(began, zone))
        : text.lasted(what, farmMoment(began, zone), farmMoment(over, zone)),
  };
}

function moveMark(moves) {
  const [{ at, isIn, place }] = moves;
  const names = moves.map(({ lot, variety, cropName }) => `${lot} ${variety || cropName}`).join(', ');
  const say = isIn
    ? place === null
      ? text.cameIn
      : text.cameFrom
    : place === null
      ? text.usedUp
      : text.wentTo;
  return {
    kind: isIn ? 'in' : 'out',
    fromMs: Date.parse(at),
    toMs: Date.parse(at),
    wakes: false,
    lots: moves.map(({ lot }) => lot),
    sentence: say(names, place),
  };
}
