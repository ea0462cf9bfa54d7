// Fuzzes the service at CONESERVICE: FUZZ_REQUESTS requests (20,000 when not set) that follow from FUZZ_SEED (printed), every answer held
// against openapi/v1.json. Ends with 1 at a failure of the service, a lost connection, or an answer that is not as told.
import fs from "node:fs";
import http from "node:http";
import zlib from "node:zlib";
import { Answers } from "./answers.mjs";
import { Chance } from "./chance.mjs";
import { frameFaults } from "./frames.mjs";
import { Requests } from "./requests.mjs";

const address = process.env.CONESERVICE;
const total = Number(process.env.FUZZ_REQUESTS ?? 20_000);
const seed = Number(process.env.FUZZ_SEED ?? Date.now() % 4_294_967_296);
const atOnce = 4;
const shown = 10;

const document = JSON.parse(fs.readFileSync(new URL("../../../openapi/v1.json", import.meta.url), "utf8"));
const agent = new http.Agent({ keepAlive: true, maxSockets: atOnce });

function send({ method, path, headers, body }) {
  return new Promise((resolve, reject) => {
    const bytes = body === undefined ? undefined : Buffer.from(body);
    const sent = { ...headers };
    if (bytes) sent["Content-Length"] = bytes.length;
    const request = http.request(address + path, { method, headers: sent, agent, timeout: 60_000 }, response => {
      const chunks = [];
      response.on("data", chunk => chunks.push(chunk));
      response.on("error", reject);
      response.on("end", () => {
        let whole = Buffer.concat(chunks);
        const coding = response.headers["content-encoding"];
        if (whole.length > 0 && coding === "gzip") whole = zlib.gunzipSync(whole);
        if (whole.length > 0 && coding === "br") whole = zlib.brotliDecompressSync(whole);
        resolve({ status: response.statusCode, headers: response.headers, body: whole });
      });
    });
    request.on("timeout", () => request.destroy(new Error("no answer within 60 s")));
    request.on("error", reject);
    request.end(bytes);
  });
}

// What may stand in members of these names, from the lists of the service itself.
async function words() {
  const read = async path => JSON.parse((await send({ method: "GET", path, headers: { Accept: "application/json" } })).body.toString("utf8")).items.map(i => i.id);
  const [chart, cone, body, glaze, schedule, colorant] = await Promise.all(
    ["/v1/charts", "/v1/cones", "/v1/clay-bodies", "/v1/glazes", "/v1/schedules", "/v1/colorants"].map(read));
  return {
    chart, cone, body, glaze, schedule, colorant, maxCone: cone, firedCone: cone, additive: [...colorant, "tin-oxide"], units: ["C", "F"], id: [...body, "a", "b"],
    heat: ["electric", "gas", "wood"], atmosphere: ["oxidation", "reduction", "neutral"], atmospheres: ["oxidation", "reduction", "neutral"], firingKind: ["bisque", "glaze", "single", "overglaze", "raku"],
    state: ["wet", "leather-hard", "bone-dry", "bisqued", "glaze-fired", "fresh", "fired"], use: ["food", "decorative"], temperature: ["1222C", "2232F", "1495K", "20C", "1222"],
    rate: ["60C/h", "108F/h", "1C/min", "150C/h", "60"], start: ["2026-12-04T18:00:00+01:00", "2026-12-04T17:00:00Z"], look: ["down", "started", "standing"], find: ["peak", "hold", "rate"],
  };
}

const chance = new Chance(seed);
const requests = new Requests(document, await words());
const answers = new Answers(document);
const counts = {}, faults = [];
let [asked, slowest, largest] = [0, { took: 0 }, { bytes: 0 }];

async function ask(request) {
  asked++;
  const began = performance.now();
  let fault;
  try {
    const answer = await send(request);
    counts[answer.status] = (counts[answer.status] ?? 0) + 1;
    if (answer.body.length > largest.bytes) largest = { bytes: answer.body.length, request };
    fault = answers.fault(request, answer);
    if (fault && answer.body.length > 0) fault += ` ${answer.body.toString("utf8").slice(0, 300)}`;
  } catch (failure) {
    // A client refuses to send some headers and paths; that is no fault of the service.
    if (failure.code?.startsWith("ERR_")) return;
    fault = `was not answered: ${failure.message}`;
  }
  const took = performance.now() - began;
  if (took > slowest.took) slowest = { took, request };
  if (fault) faults.push({ fault, request });
}

const began = performance.now();
console.log(`Fuzzing with FUZZ_SEED=${seed}.`);
const charts = requests.everyChart();
let left = total;
function next() {
  const one = charts.next();
  if (!one.done) return one.value;
  return left-- > 0 ? requests.any(chance) : null;
}
// Asked side by side, so that the order may differ from run to run; which requests are asked does not.
await Promise.all(Array.from({ length: atOnce }, async () => {
  for (let request = next(); request && faults.length < shown; request = next()) await ask(request);
}));
const frames = await frameFaults(address);
if ((await send({ method: "GET", path: "/health/live", headers: {} })).status !== 200) faults.push({ fault: "no longer lives", request: {} });

const short = ({ method, path, headers, body }) => `${method} ${path?.slice(0, 300)} ${JSON.stringify(headers)} ${body === undefined ? "" : JSON.stringify(body.toString().slice(0, 1500))}`;
console.log(`${asked} requests and ${frames.count} frames in ${Math.round((performance.now() - began) / 1000)} s: ${JSON.stringify(counts)}.`);
console.log(`Slowest ${Math.round(slowest.took)} ms: ${short(slowest.request).slice(0, 200)}. Largest ${largest.bytes} bytes: ${short(largest.request).slice(0, 200)}.`);
for (const { fault, request } of faults.slice(0, shown)) console.error(`${fault}\n  ${short(request)}`);
for (const fault of frames.faults) console.error(fault);
agent.destroy();
process.exitCode = faults.length + frames.faults.length > 0 ? 1 : 0;
