// <shed-page></shed-page> shows the shed's parts: outputs with their reasons, probes, the program.
import { html, nothing } from 'lit';
import { getJson, send } from '../lib/api.js';
import { live } from '../lib/live.js';
import { me } from '../lib/me.js';
import { PageElement } from '../lib/page-element.js';
import { ago, humidityFigure, moment, temperature, units } from '../lib/units.js';
import { Watch } from '../lib/watch.js';
import { words as roomWords } from '../rooms/words.js';
import { words } from './words.js';

const text = words.shed;
const REFRESH_MS = 10_000;

export class ShedPage extends PageElement {
  static properties = {
    view: { state: true },
    failure: { state: true },
    /** The output that is about to be switched by hand. */
    chosen: { state: true },
  };

  #timer = 0;

  constructor() {
    super();
    this.view = null;
    this.failure = null;
    this.chosen = null;
    [me, units].forEach((source) => new Watch(this, source));
  }

  connectedCallback() {
    super.connectedCallback();
    this.#load();
    this.#timer = setInterval(() => this.#load(), REFRESH_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  render() {
    const { view, failure } = this;
    const failed =
      failure === null
        ? nothing
        : html`<p class="notice" role="alert">${words.live.why[failure.kind]} ${failure.detail}</p>`;
    if (view === null) {
      return failure === null ? html`<p>${words.page.loading}</p>` : failed;
    }
    return html`${failed}
      <section class="parts" aria-labelledby="outputs-heading">
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
        <span>${output.name}</span> <strong>${output.on ? roomWords.rooms.on : roomWords.rooms.off}</strong>
        <span class="where">${output.room}</span>
      </p>
      <p class="reason">${output.reason}</p>
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

  async #load() {
    try {
      this.view = (await getJson('/api/shed')).body;
      this.failure = null;
    } catch (failure) {
      this.failure = failure;
    }
  }
}

const problem = (sentence) =>
  html`<p class="problem"><strong>${words.page.attention}:</strong> ${sentence}</p>`;
