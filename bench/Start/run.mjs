// How long a started process takes to its first answer, and how much memory it then has, beside a bare endpoint in the same run:
// node bench/Start/run.mjs ConeService.Api.dll BareEndpoint.dll [ROUNDS]. Linux only. Turn by turn, so that what else the machine does
// meets both; the quickest and the median of the rounds are told. Ends with 1 when the service takes more than 1.5 times as long at its
// quickest, or its median resident memory is more than 1.5 times as much.
import { spawn } from "node:child_process";
import fs from "node:fs";
import http from "node:http";

const [service, bare, rounds = "11"] = process.argv.slice(2);
const most = 1.5;

// A client of its own each time and no fetch: what it has to set up would count too.
const get = (port, path) => new Promise((resolve, reject) => {
  const request = http.get({ host: "127.0.0.1", port, path, agent: false }, response => {
    response.resume();
    response.on("end", () => (response.statusCode === 200 ? resolve() : reject(new Error(`${path} was answered ${response.statusCode}.`))));
  });
  request.on("error", reject);
});

async function round(path, dll, ...given) {
  const began = performance.now();
  const child = spawn("dotnet", [dll, ...given, "--urls", "http://127.0.0.1:0"], {
    env: { ...process.env, DOTNET_ENVIRONMENT: "Production" }, stdio: ["ignore", "pipe", "inherit"],
  });
  try {
    const port = await new Promise((resolve, reject) => {
      let log = "";
      child.stdout.on("data", chunk => {
        log += chunk;
        const found = log.match(/http:\/\/127\.0\.0\.1:([1-9]\d*)/);
        if (found) resolve(Number(found[1]));
      });
      child.on("exit", () => reject(new Error(`${dll} did not start: ${log}`)));
    });
    await get(port, path);
    const milliseconds = performance.now() - began;
    const status = fs.readFileSync(`/proc/${child.pid}/status`, "utf8");
    return { milliseconds, megabytes: Number(status.match(/VmRSS:\s+(\d+)/)[1]) / 1024 };
  } finally {
    child.removeAllListeners("exit");
    const ended = new Promise(go => child.once("exit", go));
    child.kill("SIGKILL");
    await ended;
  }
}

const seen = { bare: [], service: [] };
for (let i = 0; i < Number(rounds); i++) {
  seen.bare.push(await round("/", bare, "1000"));
  seen.service.push(await round("/v1/cones/6", service));
}
const sorted = (name, member) => seen[name].map(r => r[member]).sort((a, b) => a - b);
const middle = values => values[Math.floor(values.length / 2)];
const table = Object.keys(seen).map(name => ({
  name, quickest: sorted(name, "milliseconds")[0], median: middle(sorted(name, "milliseconds")), memory: middle(sorted(name, "megabytes")),
}));
console.log("| process | quickest first answer, ms | median, ms | median memory, MB |\n| --- | --- | --- | --- |");
for (const { name, quickest, median, memory } of table) console.log(`| ${name} | ${quickest.toFixed(0)} | ${median.toFixed(0)} | ${memory.toFixed(0)} |`);
const [was, is] = table;
const [slower, larger] = [is.quickest / was.quickest, is.memory / was.memory];
console.log(`The service takes ${slower.toFixed(2)} times as long at its quickest (${(is.median / was.median).toFixed(2)} at the median) and `
  + `${larger.toFixed(2)} times the memory; ${most} wanted.`);
process.exitCode = slower > most || larger > most ? 1 : 0;
