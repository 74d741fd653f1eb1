// Redraws an element when something that it shows has changed.

/** A Lit controller: asks its host for an update at each `change` of the source. */
export class Watch {
  #host;
  #source;
  #update = () => this.#host.requestUpdate();

  /**
   * @param {import('lit').ReactiveControllerHost} host
   * @param {EventTarget} source
   */
  constructor(host, source) {
    this.#host = host;
    this.#source = source;
    host.addController(this);
  }

  hostConnected() {
    this.#source.addEventListener('change', this.#update);
  }

  hostDisconnected() {
    this.#source.removeEventListener('change', this.#update);
  }
}
