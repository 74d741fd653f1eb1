// What an output is called where its room is named already: many farms write the room into the name.

/** @param {string} name of an output or probe @param {string} room in which it is */
export const partName = (name, room) =>
  name.toLowerCase().startsWith(`${room.toLowerCase()}-`) ? name.slice(room.length + 1) : name;
