// Scripts that are no modules: a library that comes as one, the worker. The browser's content policy wants
// to know that whoever names their address means to.
const policy = globalThis.trustedTypes?.createPolicy('own-script', {
  createScriptURL: (address) => {
    if (new URL(address, location.href).origin !== location.origin) {
      throw new TypeError(`${address} is not ours`);
    }
    return address;
  },
});

/** The address of a script of this site, for where the browser starts one. @param {string} address */
export const ownScript = (address) => policy?.createScriptURL(address) ?? address;

/** Runs a script of this site. @param {string} address */
export const runScript = (address) =>
  new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = ownScript(address);
    script.onload = resolve;
    script.onerror = () => reject(new Error(`${address} did not come`));
    document.head.append(script);
  });
