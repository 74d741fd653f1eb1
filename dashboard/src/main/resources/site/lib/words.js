// Every English text of the pages, so that another language needs one more file like this.

const plural = (n, one, many) => (n === 1 ? one : many);

export const words = {
  live: {
    now: 'Live',
    since: (time) => `as of ${time}`,
    reconnecting: 'Reconnecting',
    stale: 'Not live',
    lastHeard: 'Last heard:',
    staleBy: (age) => `These figures are ${age} old`,
    from: (time) => `from ${time}`,
    tryNow: 'Try now',
    title: (age, site) => `(${age} old) ${site}`,
    why: {
      offline: 'This device is offline. The page goes on by itself once it is back.',
      unreachable: 'The shed does not answer. This page keeps trying.',
      refused: 'The shed could not answer. This page keeps trying.',
      silent: 'The shed answers, but has measured nothing new.',
    },
  },

  time: {
    justNow: 'just now',
    ago: (duration) => `${duration} ago`,
  },

  page: {
    loading: 'Asking the shed…',
    nothingYet: 'Nothing to show yet',
    attention: 'Needs you',
  },

  rooms: {
    heading: 'Rooms',
    none: 'No room is set up yet. Name the first one in the settings file, then restart.',
    temperature: 'Temperature',
    humidity: 'Humidity',
    tooCold: 'too cold',
    tooWarm: 'too warm',
    tooDry: 'too dry',
    tooDamp: 'too damp',
    unknown: 'no reading',
    range: (low, high, unit) => `${low} to ${high} ${unit}`,
    noTarget: 'no target',
    where: {
      inside: (name) => `${name} inside its range`,
      low: (name, how) => `${name} below its range, ${how}`,
      high: (name, how) => `${name} above its range, ${how}`,
      unknown: (name) => `${name} has no reading`,
    },
    dewPoint: (value) => `Dew point ${value}`,
    noDewPoint: 'Dew point unknown',
    read: (age) => `read ${age}`,
    neverRead: 'no probe has answered yet',
    outputs: 'Outputs',
    observeOnly: 'Watching only: nothing here is switched.',
    on: 'on',
    off: 'off',
  },

  lots: {
    heading: 'Lots',
    none: 'No lot is entered. The shed is watched all the same, and keeps quiet.',
    left: (count) => `${count} left`,
    sinceHarvest: (n, count) =>
      n === 0 ? 'harvested today' : `${count} ${plural(n, 'day', 'days')} since harvest`,
    cured: (part) => `${part} cured`,
    inRange: (inside, all) => `${inside} of ${all} in range`,
    certain: 'Certain',
    certainNote: 'even if every probe errs against us',
    measured: 'Measured',
    measuredNote: 'as the probes read',
    possible: 'Possible',
    possibleNote: 'if every probe errs in our favour',
    outOfRange: 'Out of range',
    notMeasured: 'Not measured',
    notMeasuredNote: 'never credited',
  },

  units: {
    heading: 'Units',
    temperature: 'Temperature in',
    mass: 'Weight in',
  },
};
