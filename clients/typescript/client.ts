// Asks ConeService over fetch. What may be asked and what is answered are the types made of its document; nothing is computed here.
import type { components, paths } from "./contract.js";

export type { components, paths };
export type Problem = components["schemas"]["Problem"];

/** What was refused, in the service's own words; `problem.errors` has field, value, what is allowed and the likely mistake of each. */
export class RefusedError extends Error {
  override readonly name = "RefusedError";
  constructor(readonly problem: Problem) { super(problem.detail); }
}

/** Nobody answered in time, or what answered is no such service; `cause` says more. */
export class AwayError extends Error { override readonly name = "AwayError"; }

export interface Options {
  /** Longest wait for one attempt: 1 s; for heat work, fits, calibrations and plans 10 s, and the seconds of a plan's search besides. */
  attemptMilliseconds?: number;
  /** Longest wait with all attempts: 4 s; for heat work, fits, calibrations and plans 24 s, and a plan's seconds for each besides. */
  totalMilliseconds?: number;
  /** How often it is asked again after no answer, 5xx, 408 and 429; 2. No question changes anything, so each may be asked again. */
  retries?: number;
  /** Ends every wait. */
  signal?: AbortSignal;
  /** Asks in place of the global fetch. */
  fetch?: typeof fetch;
}

type Method = "get" | "post";
type PathsOf<M extends Method> = { [P in keyof paths]: paths[P] extends Record<M, { responses: unknown }> ? P : never }[keyof paths];
type Body<O> = O extends { requestBody: { content: { "application/json": infer B } } } ? { body: B } : unknown;
type Asked<O> = O extends { parameters: infer P } ? Pick<P, keyof P & ("path" | "query")> & Body<O> : never;
type Answer<O> = O extends { responses: { 200: { content: { "application/json": infer A } } } } ? A : never;
type Rest<A> = Record<never, never> extends A ? [asked?: A] : [asked: A];
interface Parts { path?: object; query?: object; body?: unknown }

const long = /^\/v1\/(heat-work|kilns\/calibrate|plans$|schedules\/.*fit)/;

/** A client of the service at an address, such as `https://studio.example/cones`. */
export function coneClient(service: string | URL, options: Options = {}) {
  const root = String(service).replace(/\/+$/, "");

  async function ask<A>(method: Method, path: string, { path: parts = {}, query = {}, body }: Parts): Promise<A> {
    // A plan is searched for as long as was asked, left out 5 s, each time that it is asked for; what is no such time is refused.
    const seconds = Number((query as { seconds?: string }).seconds ?? 5);
    const searched = path === "/v1/plans" && seconds >= 0.5 && seconds <= 30 ? seconds * 1_000 : 0;
    const usual = long.test(path) ? { attempt: 10_000, total: 24_000 } : { attempt: 1_000, total: 4_000 };
    const retries = options.retries ?? 2;
    const attempt = (options.attemptMilliseconds ?? usual.attempt) + searched;
    const total = AbortSignal.timeout((options.totalMilliseconds ?? usual.total) + searched * (retries + 1));
    const all = [total, ...(options.signal ? [options.signal] : [])];
    const given = Object.entries(query).filter(([, value]) => value !== undefined).map(([name, value]) => [name, String(value)]);
    const place = Object.entries(parts).reduce((text, [name, value]) => text.replace(`{${name}}`, encodeURIComponent(value)), path);
    const address = `${root}${place}${given.length > 0 ? `?${new URLSearchParams(given)}` : ""}`;
    for (let failed = 0; ; failed++) {
      try {
        const signal = AbortSignal.any([...all, AbortSignal.timeout(attempt)]);
        const sent = body === undefined ? {} : { body: JSON.stringify(body) };
        const headers = { accept: "application/json", ...(body === undefined ? {} : { "content-type": "application/json" }) };
        const answer = await (options.fetch ?? fetch)(address, { method: method.toUpperCase(), headers, signal, ...sent });
        const told = await answer.json() as unknown;
        if (answer.ok) return told as A;
        const refused = answer.status < 500 && answer.status !== 408 && answer.status !== 429;
        if (refused && Array.isArray((told as Problem | null)?.errors)) throw new RefusedError(told as Problem);
        throw new Error(`The service answered ${answer.status}.`);
      } catch (cause) {
        options.signal?.throwIfAborted();
        if (cause instanceof RefusedError) throw cause;
        if (failed >= retries || total.aborted) throw new AwayError(`Nobody answered ${address}.`, { cause });
        // Twice as long each time, and not at the same moment as everybody else; searches hold their places for seconds.
        await new Promise((go) => setTimeout(go, (searched > 0 ? 1_000 : 100) * 2 ** failed * (0.5 + Math.random())));
        // Not asked once more after the whole time: a fetch in place of the usual one need not look at what has ended already.
        options.signal?.throwIfAborted();
        if (total.aborted) throw new AwayError(`Nobody answered ${address}.`, { cause });
      }
    }
  }

  return {
    /** Asks with an address alone; rejects with a {@link RefusedError} or an {@link AwayError}. */
    get: <P extends PathsOf<"get">>(path: P, ...[asked]: Rest<Asked<paths[P]["get"]>>) =>
      ask<Answer<paths[P]["get"]>>("get", path, (asked ?? {}) as Parts),
    /** Asks with a body; rejects with a {@link RefusedError} or an {@link AwayError}. */
    post: <P extends PathsOf<"post">>(path: P, ...[asked]: Rest<Asked<paths[P]["post"]>>) =>
      ask<Answer<paths[P]["post"]>>("post", path, (asked ?? {}) as Parts),
  };
}
