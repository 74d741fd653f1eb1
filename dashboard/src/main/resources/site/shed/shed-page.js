// <shed-page></shed-page> shows the shed's parts: outputs with their reasons, probes, the program.
import { html, nothing } from 'lit';
import { send } from '../lib/api.js';
import { AskingElement } from '../lib/asking-element.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { ago, humidityFigure, moment, temperature, told, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { partName } from '../rooms/part-name.js';
import { words as roomWords } from '../rooms/words.js';
import { words } from './words.js';

const text = words.shed;
const REFRESH_MS = 10_000;

export class ShedPage extends AskingElement {
  static properties = {
    /** The output that is about to be switched by hand. */
    chosen: { state: true },
  };

  path = '/api/shed';

  #timer = 0;

  constructor() {
    super();
    this.chosen = null;
    [me, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    this.#timer = setInterval(() => this.load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  shown(view) {
    return html`<section class="parts" aria-labelledby="outputs-heading">
        <h2 id="outputs-heading">${text.outputs}</h2>
        ${me.works ? nothing : html`<p class="ways"><a href="/you">${text.signIn}</a></p>`}
        <ul>
          ${view.outputs.map((output) => this.#output(output))}
        </ul>
      </section>
      <section class="parts" aria-labelledby="probes-heading">
        <h2 id="probes-heading">${text.probes}</h2>
        <ul>
          ${view.probes.map((probe) => this.#probe(probe))}
        </ul>
      </section>
      <section class="parts" aria-labelledby="program-heading">
        <h2 id="program-heading">${text.program}</h2>
        <dl>
          ${view.health.map(
            ({ what, sentence, wrong }) =>
              html`<div data-wrong=${wrong}>
                <dt>${what}</dt>
                <dd>
                  ${wrong ? html`<strong>${words.page.attention}:</strong> ` : nothing}${sentence}
                </dd>
              </div>`,
          )}
        </dl>
      </section>
      <shed-record></shed-record>
      ${this.chosen === null
        ? nothing
        : html`<switch-dialog
            .output=${this.chosen}
            .longestMinutes=${view.longestManualMinutes}
            @done=${(event) => this.#done(event.detail)}
          ></switch-dialog>`}`;
  }

  #output(output) {
    const { manual } = output;
    return html`<li data-on=${output.on}>
      <p class="part">
        <svg class="lamp" viewBox="0 0 12 12" aria-hidden="true"><circle cx="6" cy="6" r="4.5" /></svg>
        <span>${partName(output.name, output.room)}</span> <strong>${output.on ? roomWords.rooms.on : roomWords.rooms.off}</strong>
        <span class="where">${output.room}</span>
      </p>
      <p class="reason">${told(output.reason)}</p>
      ${output.problem === null ? nothing : problem(output.problem)}
      ${manual === null
        ? nothing
        : html`<p class="by-hand">${text.byHand(manual.on, moment(manual.until), manual.by)}</p>`}
      ${me.works ? this.#ways(output) : nothing}
    </li>`;
  }

  #ways(output) {
    const label = `${text.switch}: ${output.name}, ${output.room}`;
    return html`<p class="ways">
      <button
        type="button"
        aria-label=${label}
        ?disabled=${live.isStale}
        @click=${() => (this.chosen = output)}
      >
        ${text.switch}</button
      >${output.manual === null
        ? nothing
        : html`<button type="button" @click=${() => this.#release(output)}>${text.release}</button>`}
    </p>`;
  }

  #probe(probe) {
    const values = [
      probe.temperatureC === null ? null : temperature(probe.temperatureC),
      probe.relativeHumidity === null ? null : `${humidityFigure(probe.relativeHumidity)}\u00a0%`,
    ].filter(Boolean);
    return html`<li>
      <p class="part">
        <span>${probe.name}</span>
        <strong>${values.length === 0 ? text.noValue : values.join(', ')}</strong>
      </p>
      <p class="reason">
        ${[
          probe.room,
          text.place[probe.place] ?? probe.place,
          probe.ageSeconds === null ? roomWords.rooms.neverRead : roomWords.rooms.read(ago(probe.ageSeconds)),
        ]
          .filter(Boolean)
          .join(', ')}
      </p>
      ${probe.problem === null ? nothing : problem(probe.problem)}
    </li>`;
  }

  #done(view) {
    this.chosen = null;
    if (view !== null) {
      this.view = view;
    }
  }

  async #release({ room, kind }) {
    try {
      const path = `/api/shed/commands/${encodeURIComponent(room)}/${encodeURIComponent(kind)}`;
      this.view = await send('DELETE', path);
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }
}

const problem = (sentence) =>
  html`<p class="problem"><strong>${words.page.attention}:</strong> ${told(sentence)}</p>`;
