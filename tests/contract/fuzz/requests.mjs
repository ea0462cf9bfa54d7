// Requests of every kind to every address of the document.
import { junk, oddTexts, Values, write } from "./values.mjs";

const encode = text => encodeURIComponent(text.isWellFormed() ? text : text.toWellFormed());
const languages = ["de", "en", "de-AT,de;q=0.9", "*", "x", "fr;q=0", "🔥".toWellFormed().length > 5 ? "" : "de;q=2"];
const accepts = ["application/json", "text/csv", "image/svg+xml", "text/html", "text/calendar", "text/plain", "*/*", "text/*;q=0.5, */*;q=0.1", "application/*", "x", ";;", "application/json;q=0"];

export class Requests {
  constructor(document, words) {
    this.values = new Values(document, words);
    this.words = words;
    this.operations = Object.entries(document.paths).flatMap(([route, path]) =>
      Object.entries(path).map(([method, operation]) => ({ route, method: method.toUpperCase(), operation })));
    // Bodies have more to be got wrong than addresses.
    this.posts = this.operations.filter(o => o.method === "POST");
  }

  // Every chart at every POST that takes one.
  *everyChart() {
    for (const { route, method, operation } of this.posts) {
      for (const [type, { examples }] of Object.entries(operation.requestBody.content)) {
        if (type !== "application/json") continue;
        for (const { value } of Object.values(examples ?? {})) {
          for (const chart of this.words.chart) {
            for (const cone of ["022", "06", "6", "13"]) {
              const body = structuredClone(value);
              const within = body.lines ?? body.items ?? body.firings ?? [body];
              for (const each of within) Object.assign(each, { chart, cone });
              yield this.request(method, this.path(route, operation), { "Content-Type": type }, JSON.stringify(body));
            }
          }
        }
      }
    }
  }

  path(route, operation, chance) {
    return route.replace(/\{([^}]+)\}/g, (_, name) => {
      const parameter = operation.parameters?.find(p => p.name === name && p.in === "path");
      const usual = parameter?.example ?? Object.values(parameter?.examples ?? {})[0]?.value;
      if (!chance) return encode(String(usual ?? this.words[name]?.[0] ?? "6"));
      if (chance.is(0.25)) return encode(chance.one(oddTexts));
      return encode(String(chance.one(this.words[name] ?? [usual ?? "6"])));
    });
  }

  query(operation, chance) {
    const given = (operation.parameters ?? []).filter(p => p.in === "query" && chance.is(0.35)).map(p => {
      const usual = p.example ?? Object.values(p.examples ?? {})[0]?.value;
      const value = chance.is(0.3) ? chance.one(oddTexts) : chance.is(0.5) && usual !== undefined ? usual : chance.one(this.words[p.name] ?? oddTexts);
      return [p.name, String(value)];
    });
    if (chance.is(0.04)) given.push([chance.one(oddTexts), chance.one(oddTexts)]);
    if (chance.is(0.02) && given.length > 0) given.push(given[0]);
    return given.length > 0 ? `?${given.map(([name, value]) => `${encode(name)}=${encode(value)}`).join("&")}` : "";
  }

  request(method, path, headers, body) {
    return { method, path, headers, body };
  }

  any(chance) {
    const { route, method, operation } = chance.is(0.7) ? chance.one(this.posts) : chance.one(this.operations);
    const headers = {};
    if (chance.is(0.25)) headers.Accept = chance.one(accepts);
    if (chance.is(0.1)) headers["Accept-Language"] = chance.one(languages);
    if (chance.is(0.05)) headers["Accept-Encoding"] = chance.one(["gzip", "br", "identity", "x", "*;q=0"]);
    if (chance.is(0.03)) headers["If-None-Match"] = chance.one(["*", "\"x\"", "W/\"x\"", ""]);
    if (chance.is(0.03)) headers.traceparent = chance.one(["00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01", "x", "00-0-0-00"]);
    if (chance.is(0.03)) headers.Origin = "https://studio.example";
    let path = this.path(route, operation, chance) + (chance.is(0.03) ? chance.one([".json", ".csv", ".svg", ".x", "/", "//"]) : "") + this.query(operation, chance);
    if (chance.is(0.01)) path = "/" + encode(chance.one(oddTexts));
    const verb = chance.is(0.015) ? chance.one(["PUT", "DELETE", "PATCH", "OPTIONS", "HEAD", "QUERY"]) : method;
    if (method !== "POST") return this.request(verb, path, headers);
    const [type, text] = this.body(operation, chance);
    headers["Content-Type"] = chance.is(0.02) ? chance.one(["text/plain", "application/xml", "application/json; charset=utf-16", "application/json; charset=utf-8", "x", ""]) : type;
    if (chance.is(0.005)) headers["Content-Encoding"] = chance.one(["gzip", "br", "identity", "x"]);
    return this.request(verb, path, headers, chance.is(0.03) ? this.bytes(text, chance) : text);
  }

  body(operation, chance) {
    const content = operation.requestBody.content;
    if (content["text/csv"] && chance.is(0.2)) return ["text/csv", this.csv(chance)];
    const { schema, examples } = content["application/json"];
    const given = Object.values(examples ?? {}).map(e => e.value);
    switch (chance.below(6)) {
      case 0: return ["application/json", write(this.values.of(schema, chance, "valid"))];
      case 1: return ["application/json", write(this.values.of(schema, chance, "edge"))];
      case 2: return ["application/json", write(this.values.of(schema, chance, "wild"))];
      case 3: return ["application/json", write(chance.is(0.05) ? junk(chance) : chance.one(given))];
      default: return ["application/json", write(this.values.mutate(chance.one(given), chance))];
    }
  }

  csv(chance) {
    const separator = chance.one([",", ";", "\t", "|"]), end = chance.one(["\n", "\r\n", "\r"]);
    const log = chance.is(0.5);
    const header = log ? chance.one([["minutes", "temperature_c"], ["time", "temperature"], ["date", "time", "temp 1", "temp 2"], []]) : ["cone", "temperature", "rate", "chart"].filter(() => chance.is(0.7));
    const cell = row => {
      if (chance.is(0.06)) return chance.one(oddTexts);
      if (chance.is(0.03)) return `"${chance.one(oddTexts)}`;
      return log ? String(chance.is(0.5) ? row * 5 : 20 + row * 10) : chance.one(["6", "06", "1222C", "60C/h", "", "witness-large"]);
    };
    const rows = Array.from({ length: chance.below(40) }, (_, row) => Array.from({ length: Math.max(1, header.length + (chance.is(0.03) ? 1 : 0)) }, (_, column) =>
      log && !chance.is(0.1) ? String(column === 0 ? row * 20 : 20 + row * 30) : cell(row)));
    return [header, ...rows].map(r => r.join(separator)).join(end);
  }

  // The text with bytes changed, lost or added, so that it may be neither UTF-8 nor JSON any more.
  bytes(text, chance) {
    const bytes = Buffer.from(text, "utf8");
    if (bytes.length === 0) return bytes;
    const at = chance.below(bytes.length);
    switch (chance.below(6)) {
      case 0: bytes[at] = chance.below(256); return bytes;
      case 1: return bytes.subarray(0, at);
      case 2: return Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]);
      case 3: return Buffer.concat([bytes, bytes]);
      case 4: return Buffer.from(text, "utf16le");
      default: return Buffer.concat([bytes.subarray(0, at), Buffer.from(chance.one(["[", "{", "}", "]", ",", "\"", "\\", "/*", "\u0000"]).repeat(1 + chance.below(100))), bytes.subarray(at)]);
    }
  }
}
