// A program that has the packed package and nothing else of this repository; run with the address of a service in CONESERVICE.
import { AwayError, coneClient, RefusedError } from "coneservice";
import type { Tables } from "coneservice/tables";
import about from "coneservice/data/package.json" with { type: "json" };
import cones from "coneservice/data/cones.json" with { type: "json" };
import endPoints from "coneservice/data/end-points.json" with { type: "json" };
import glazes from "coneservice/data/glazes.json" with { type: "json" };

declare const process: { env: Record<string, string | undefined> };

const service = process.env["CONESERVICE"];
if (!service) throw new Error("CONESERVICE names no service.");
// The machine of the gate may be slow; that is not what is asked here.
const patient = { attemptMilliseconds: 30_000, totalMilliseconds: 60_000 };
const client = coneClient(`${service}/`, patient);

function expect(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(`Not so: ${what}`);
}

async function rejected(asked: Promise<unknown>): Promise<unknown> {
  return asked.then(() => undefined, (reason: unknown) => reason);
}

// The chart of self-supporting cones prints 1222 °C for cone 6 and 998 °C for cone 06 at 60 °C/h (orton-2016).
const six = await client.get("/v1/cones/{cone}/end-point", { path: { cone: "6" }, query: { rate: "60C/h" } });
expect(six.celsius === 1222, `cone 6 goes down at 1222 °C, not ${six.celsius}`);
const basis: "printed" | "interpolated" | "extrapolated" | "borrowed" = six.basis;
expect(basis === "printed", "it stands in the chart");
const scale = await client.get("/v1/cones");
expect(scale.items.some((cone) => cone.id === "06"), "a cone is text in a list too");
const half = await client.get("/v1/cones/{cone}", { path: { cone: "5 1/2" } });
expect(half.cone === "5.5", "what a path holds is written as an address has it");

const load = await client.post("/v1/loads/check", {
  body: {
    kiln: { heat: "electric", maxCone: "8", atmospheres: ["oxidation"] },
    firing: { firingKind: "glaze", cone: "6", atmosphere: "oxidation" },
    pieces: [{ id: "mug", body: "red-earthenware", state: "bisqued" }],
  },
});
expect(load.verdict === "refuse", "red earthenware does not stand cone 6");

// A plan is searched for as long as was asked: its wait is that and the usual one, of which this fetch takes five times as much.
const slowly: typeof fetch = async (address, sent) => {
  await new Promise((go) => setTimeout(go, 1_000));
  sent!.signal!.throwIfAborted();
  return fetch(address, sent);
};
const plan = await coneClient(service, { attemptMilliseconds: 200, totalMilliseconds: 800, fetch: slowly }).post("/v1/plans", {
  query: { seconds: "30" },
  body: {
    horizon: { from: "2026-12-01T00:00", to: "2026-12-15T00:00" },
    timeZone: "Europe/Berlin",
    kilns: [{
      kiln: { id: "small", heat: "electric", maxCone: "10", interior: { heightMillimetres: 600, diameterMillimetres: 600 } },
      firings: [{ firingKind: "bisque", cone: "06", atmosphere: "oxidation", minutes: 1200, kilowattHours: 60 }],
      starts: ["2026-12-04T18:00"],
    }],
    pieces: [{
      piece: {
        id: "mug", count: 8, body: "mid-range-stoneware-light", state: "bone-dry", size: { heightMillimetres: 100, widthMillimetres: 80 },
      },
    }],
    objective: { minimumFillPercent: 0 },
  },
});
expect(plan.firings.length === 1 && plan.firings[0]?.start === "2026-12-04T18:00:00+01:00", "eight mugs are fired when the kiln can be");
const why: "pinned" | "announced" | "date" | "full" = plan.firings[0].why;
expect(why === "full" && plan.summary.undone === 0, "all of them");

// There is no cone 0, which the service says with a code; it is not asked again.
const refused = await rejected(client.get("/v1/cones/{cone}", { path: { cone: "0" } }));
expect(refused instanceof RefusedError && refused.problem.status === 400, "cone 0 is refused");
expect(refused.problem.errors[0]?.code === "cone-zero" && refused.message === refused.problem.detail, "in words for people");

// Two attempts fail each in its way, and the third answers.
const faults: (() => Response)[] = [
  () => new Response("{}", { status: 503 }), () => { throw new TypeError("cut off"); }, () => new Response("<p>Welcome"),
];
let asked = 0;
const flaky = (attempts: number): typeof fetch => async (address, sent) => asked++ < attempts ? faults[asked - 1]!() : fetch(address, sent);
const late = await coneClient(service, { ...patient, fetch: flaky(2) }).get("/v1/dataset");
expect(late.datasetVersion === six.datasetVersion && asked === 3, "it is asked again");
asked = 0;
const gaveUp = await rejected(coneClient(service, { ...patient, fetch: flaky(3) }).get("/v1/dataset"));
expect(gaveUp instanceof AwayError && asked === 3, "and no more than twice");

// A refusal that is not the service's, such as a proxy's, is none.
const proxy: typeof fetch = async () => new Response(`{"error":"no"}`, { status: 403 });
expect(await rejected(coneClient(service, { fetch: proxy, retries: 0 }).get("/v1/dataset")) instanceof AwayError, "that is no refusal");

// A service that takes for ever is waited for no longer than said.
const never: typeof fetch = (_, sent) => new Promise((_go, stop) => {
  sent!.signal!.addEventListener("abort", () => stop(sent!.signal!.reason));
});
// Waits of signals alone don't keep a program alive.
const alive = setInterval(() => undefined, 1_000);
const began = Date.now();
const slow = await rejected(coneClient(service, { fetch: never, attemptMilliseconds: 200, totalMilliseconds: 500 }).get("/v1/dataset"));
expect(slow instanceof AwayError && Date.now() - began < 2_000, "the wait ends");
// The whole time ends while it waits to ask again: after 120 ms at the earliest 50 and at the latest 150 later.
const paused = await rejected(coneClient(service, { fetch: never, attemptMilliseconds: 120, totalMilliseconds: 150 }).get("/v1/dataset"));
expect(paused instanceof AwayError && Date.now() - began < 4_000, "the wait ends between two attempts too");
const mine = new AbortController();
setTimeout(() => mine.abort(new Error("closed")), 50);
const closed = await rejected(coneClient(service, { fetch: never, signal: mine.signal }).get("/v1/dataset"));
expect(closed instanceof Error && closed.message === "closed", "whoever asks may end it");
clearInterval(alive);

// The data says the same as the service, and 06 is not 6.
const rows: Tables["end-points"] = endPoints;
const printed = (cone: string) => rows.find((row) =>
  row.chart === "witness-self-supporting" && row.cone === cone && row.rate_celsius_per_hour === 60)?.celsius;
expect(printed("6") === 1222 && printed("06") === 998, "cone 6 is printed with 1222 °C and cone 06 with 998 °C");
const scaleRows: Tables["cones"] = cones;
expect(scaleRows.every((row) => typeof row.id === "string") && new Set(scaleRows.map((row) => row.id)).size === scaleRows.length, "text");
const glazeRows: Tables["glazes"] = glazes;
expect(glazeRows.every((row) => Array.isArray(row.source)), "a list is a list");
expect(six.datasetVersion.startsWith(about.version), `the service has the data of ${about.version}`);

// @ts-expect-error a cone is text: a number can't tell 06 from 6
export const numberInPath = () => client.get("/v1/cones/{cone}", { path: { cone: 6 } });

// @ts-expect-error the path needs its cone
export const withoutCone = () => client.get("/v1/cones/{cone}");

// @ts-expect-error a misspelt parameter must not become the default rate
export const misspelt = () => client.get("/v1/cones/{cone}/end-point", { path: { cone: "6" }, query: { rat: "60C/h" } });

// @ts-expect-error this one is asked with a body
export const withoutBody = () => client.get("/v1/conversions");

// @ts-expect-error a plan needs kilns and pieces
export const withoutKilns = () => client.post("/v1/plans", { body: { horizon: { from: "2026-12-01T00:00Z", to: "2026-12-15T00:00Z" } } });

// @ts-expect-error without its units a programme is refused
export const withoutUnits = () => client.post("/v1/heat-work", { body: { segments: [{ rate: 60, target: 1222 }] } });

console.log(`The packed client asked a service with data ${six.datasetVersion}.`);
