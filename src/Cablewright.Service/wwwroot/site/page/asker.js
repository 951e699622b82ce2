// Asks the service about the build on the page: a moment after the last change, and only about the last one.

const pauseMilliseconds = 250;
const slowMilliseconds = 300;
const longestWaitSeconds = 60;

/**
 * @typedef {{ kind: "answer", answer: Assessment, build: Build }
 *   | { kind: "faults", problem: Problem, build: Build }
 *   | { kind: "busy", seconds: number, build: Build }
 *   | { kind: "unreachable", build: Build }} Outcome
 */

export class Asker {
  /** @type {AbortController | undefined} */
  #call;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #pause;

  /** @param {(outcome: Outcome) => void} tell @param {(isSlow: boolean) => void} wait told when a call takes long, and when it ends */
  constructor(tell, wait) {
    this.tell = tell;
    this.wait = wait;
  }

  /** Asks after a pause in which nothing else is asked. @param {Build} build @param {number} [pause] */
  ask(build, pause = pauseMilliseconds) {
    this.stop();
    this.#pause = setTimeout(() => void this.#askNow(build), pause);
  }

  /** Gives up what is under way. */
  stop() {
    clearTimeout(this.#pause);
    this.#call?.abort();
    this.wait(false);
  }

  /** @param {Build} build */
  async #askNow(build) {
    const call = new AbortController();
    this.#call = call;
    const slow = setTimeout(() => this.wait(true), slowMilliseconds);
    const outcome = await assess(build, call.signal);
    clearTimeout(slow);
    if (call.signal.aborted) return;
    this.wait(false);
    this.tell(outcome);
    if (outcome.kind === "busy") this.ask(build, outcome.seconds * 1000);
  }
}

/** @param {Build} build @param {AbortSignal} signal @returns {Promise<Outcome>} */
async function assess(build, signal) {
  try {
    const response = await post(build, "application/json", signal);
    if (response.ok) return { kind: "answer", answer: await response.json(), build };
    if (response.status === 429 || response.status === 503) return { kind: "busy", seconds: waitOf(response), build };
    if (!response.headers.get("content-type")?.includes("problem+json")) return { kind: "unreachable", build };
    return { kind: "faults", problem: await response.json(), build };
  } catch {
    return { kind: "unreachable", build };
  }
}

/** @param {Response} response */
function waitOf(response) {
  const seconds = Number(response.headers.get("retry-after"));
  return Math.min(Number.isFinite(seconds) && seconds > 0 ? seconds : 5, longestWaitSeconds);
}

/** Posts a build for an answer of that form. @param {Build} build @param {string} accept @param {AbortSignal} [signal] */
export function post(build, accept, signal) {
  return fetch("v1/assessments", {
    method: "POST",
    headers: { "content-type": "application/json", accept },
    body: JSON.stringify(build),
    ...(signal ? { signal } : {}),
  });
}
