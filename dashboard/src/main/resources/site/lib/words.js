// The English texts that every page needs. Each page's own stand in the `words.js` of its folder, on top
// of these; another language needs one more file like each of them.

/** @returns {string} the word that goes with so many */
export const plural = (n, one, many) => (n === 1 ? one : many);

export const words = {
  live: {
    now: 'Live',
    since: (time) => `as of ${time}`,
    farmTime: (zone) => `the farm’s time, ${zone}`,
    reconnecting: 'Reconnecting',
    stale: 'Not live',
    lastHeard: 'Last heard:',
    staleBy: (age) => `These figures are ${age} old`,
    from: (time) => `from ${time}`,
    tryNow: 'Try now',
    ofOldBuild: 'The shed was updated since this page was opened.',
    loadAgain: 'Load it again',
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

  nav: {
    label: 'Pages',
    now: 'Now',
    alarms: 'Alarms',
    lots: 'Lots',
    tastings: 'Tastings',
    varieties: 'Varieties',
    shed: 'Shed',
    placards: 'Placards and labels',
    you: 'Sign in',
    who: 'Who you are',
    taste: 'Tasting',
  },

  page: {
    site: 'The shed',
    loading: 'Asking the shed…',
    nothingYet: 'Nothing to show yet',
    attention: 'Needs you',
    nowhere: 'There is nothing at this address',
    toNow: 'The shed as it is now',
  },

  units: {
    heading: 'Units',
    temperature: 'Temperature in',
    mass: 'Weight in',
  },
};
