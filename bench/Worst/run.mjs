// What the dearest known requests cost: node bench/Worst/run.mjs ConeService.Api.dll [--short]. Linux only. Starts the service on a port of
// the system's choice. Of every request: processor time of the service beside that of parsing the body as JSON in this same run, and by how
// much its resident memory rose above what it had. Then 32 of the dearest at a time, and how long the health route takes meanwhile.
// Ends with 1 when a ceiling is passed or an answer is a failure. --short, for a machine that does other things too, has no ceiling in
// seconds: its one of time is that of the yardstick, 4 MB of JSON parsed in this run.
import { spawn } from "node:child_process";
import fs from "node:fs";
import { bodies } from "./bodies.mjs";

const [dll, ...options] = process.argv.slice(2);
const short = options.includes("--short");
// s and MB of a request below 4 MB, s of the health route; and parsings of the yardstick, which holds however the machine is.
const most = { seconds: short ? Infinity : 2, megabytes: 300, yardsticks: 16, health: short ? Infinity : 1 };
// Below this the ticks of the system, 10 ms, say nothing; and a body of no length is parsed in no time.
const leastParse = 0.005;

const service = spawn("dotnet", [dll, "--urls", "http://127.0.0.1:0"], {
  env: { ...process.env, DOTNET_ENVIRONMENT: "Production", "Logging__LogLevel__ConeService.Access": "Warning" }, stdio: ["ignore", "pipe", "inherit"],
});
const address = await new Promise((resolve, reject) => {
  let log = "";
  service.stdout.on("data", chunk => {
    log += chunk;
    const found = log.match(/http:\/\/127\.0\.0\.1:[1-9]\d*/);
    if (found) resolve(found[0]);
  });
  service.on("exit", () => reject(new Error(`The service did not start: ${log}`)));
});

const seconds = () => {
  const fields = fs.readFileSync(`/proc/${service.pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
};
const megabytes = name => Number(fs.readFileSync(`/proc/${service.pid}/status`, "utf8").match(new RegExp(`${name}:\\s+(\\d+)`))[1]) / 1024;
// The highest that resident memory was is counted anew.
const forget = () => fs.writeFileSync(`/proc/${service.pid}/clear_refs`, "5");

async function ask(path, body, type) {
  const response = await fetch(address + path, { method: "POST", headers: { "Content-Type": type, Accept: "application/json" }, body });
  return [response.status, (await response.arrayBuffer()).byteLength];
}

function parsing(body) {
  let times = 0;
  const began = process.cpuUsage();
  let spent = 0;
  for (; spent < leastParse * 1e6; times++) {
    try {
      JSON.parse(body);
    } catch {
      // A CSV is read as far as JSON goes, which is not at all; its bytes are looked at instead.
      Buffer.from(body).toString("latin1");
    }
    const used = process.cpuUsage(began);
    spent = used.user + used.system;
  }
  return spent / 1e6 / times;
}

// What the service would have to parse anyway, and 4 MB are the most that it reads of JSON.
const yardstick = parsing(`{"items":[${"{},".repeat(1_300_000)}{}]}`);

// Asks those at the same time, and looks at the health route until all are answered.
async function sideBySide(dearest, count) {
  const statuses = {};
  let [asking, slowest, looked] = [true, 0, 0];
  const all = Promise.all(Array.from({ length: count }, async (_, i) => {
    const [path, , body, type = "application/json"] = dearest[i % dearest.length];
    const [status] = await ask(path, body, type);
    statuses[status] = (statuses[status] ?? 0) + 1;
  })).finally(() => { asking = false; });
  for (; asking; looked++) {
    const began = performance.now();
    const health = await fetch(`${address}/health/live`);
    await health.arrayBuffer();
    slowest = Math.max(slowest, (performance.now() - began) / 1000);
    if (health.status !== 200) statuses[`health ${health.status}`] = 1;
    await new Promise(go => setTimeout(go, 50));
  }
  await all;
  return { statuses, slowest, looked };
}

let failed = false;
console.log("| address | what | bytes | answer | status | processor, s | parsing, s | ratio | memory, MB | bytes a byte |");
console.log("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
try {
  const read = async path => (await (await fetch(address + path, { headers: { Accept: "application/json" } })).json()).items.map(i => i.id);
  const all = await bodies(read);
  const dear = [];
  for (const [path, what, body, type = "application/json"] of all) {
    // Compiled first; the second time counts.
    await ask(path, body, type);
    forget();
    const [before, had] = [seconds(), megabytes("VmRSS")];
    const [status, answered] = await ask(path, body, type);
    const [spent, rose] = [seconds() - before, Math.max(0, megabytes("VmHWM") - had)];
    const parse = parsing(body);
    const ratio = spent / Math.max(parse, leastParse);
    // A plan searches on both cores for as long as it was asked to.
    const wanted = 2 * Number(new URL(path, address).searchParams.get("seconds") ?? 0);
    dear.push([spent - wanted, [path, what, body, type]]);
    const passed = spent - wanted > most.seconds || spent - wanted > most.yardsticks * yardstick || rose > most.megabytes || status >= 500;
    failed ||= passed;
    console.log(`| ${path} | ${what} | ${body.length} | ${answered} | ${status} | ${spent.toFixed(2)} | ${parse.toFixed(4)} | ${ratio.toFixed(1)} | ${rose.toFixed(0)} | ${(rose * 1048576 / body.length).toFixed(0)} |${passed ? " above its ceiling |" : ""}`);
  }
  const dearest = dear.sort(([a], [b]) => b - a).slice(0, 8).map(([, request]) => request);
  const together = await sideBySide(dearest, 32);
  const slow = together.slowest > most.health || Object.keys(together.statuses).some(s => !(Number(s) < 500 || s === "503"));
  failed ||= slow;
  console.log(`\nYardstick: 4 MB of JSON parsed in ${yardstick.toFixed(3)} s; no request more than ${most.yardsticks} times that.`);
  console.log(`32 of the dearest at a time: ${JSON.stringify(together.statuses)}; of ${together.looked} looks at /health/live the slowest `
    + `took ${together.slowest.toFixed(2)} s.${slow ? " Above its ceiling." : ""}`);
} finally {
  service.kill();
}
process.exitCode = failed ? 1 : 0;
