// Resolves when what was drawn until now has been seen, for what can wait that long: two frames on.
const frame = () => new Promise(requestAnimationFrame);

export const seen = () => frame().then(frame);
