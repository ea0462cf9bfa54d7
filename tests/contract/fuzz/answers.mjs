// Holds answers against the document, with a validator of JSON Schema 2020-12.
import Ajv2020 from "ajv/dist/2020.js";

const most = { findings: 50, value: 200, detail: 20_000, bytes: 8_000_000 };

export class Answers {
  constructor(document) {
    // Callers may meet members that were added later; here every member must be in the document.
    this.document = structuredClone(document);
    for (const schema of Object.values(this.document.components.schemas)) {
      if (schema.properties) schema.additionalProperties ??= false;
    }
    this.ajv = new Ajv2020({ strict: false, validateFormats: false, messages: true });
    this.ajv.addSchema({ $id: "https://document.invalid/", ...this.document });
    this.held = new Map();
    this.routes = Object.keys(document.paths)
      .sort((a, b) => (a.match(/\{/g)?.length ?? 0) - (b.match(/\{/g)?.length ?? 0))
      .map(route => ({ route, shape: new RegExp(`^${route.replace(/\{[^}]+\}/g, "[^/]+")}$`) }));
  }

  validator(pointer) {
    if (!this.held.has(pointer)) this.held.set(pointer, this.ajv.compile({ $ref: `https://document.invalid/#${pointer}` }));
    return this.held.get(pointer);
  }

  // What is wrong with an answer; null when it is as told.
  fault(asked, { status, headers, body }) {
    if (status >= 500) return `answered ${status}`;
    if (status < 200 || status > 599) return `answered ${status}`;
    if (body.length > most.bytes) return `answered ${body.length} bytes`;
    const type = headers["content-type"]?.split(";")[0];
    const text = body.toString("utf8");
    let json;
    if (type?.endsWith("json") && asked.method !== "HEAD") {
      try {
        json = JSON.parse(text);
      } catch (failure) {
        return `is no JSON: ${failure.message}`;
      }
    }
    if (type === "application/problem+json" && json !== undefined) {
      const wrong = this.problem(json, status);
      if (wrong) return wrong;
    } else if (status >= 400 && body.length > 0 && type !== "text/html") return `refused as ${type}`;
    if (type === "image/svg+xml" && /<[^<>]*(NaN|Infinity|∞)[^<>]*>/.test(text)) return "draws what is not finite";
    return this.contract(asked, status, type, json);
  }

  problem(json, status) {
    if (json?.status !== status) return `the problem says ${json?.status}, the answer ${status}`;
    if (json.errors.length > most.findings) return `lists ${json.errors.length} findings`;
    if (json.errors.some(e => e.value?.length > most.value)) return "tells a long value back";
    if (json.detail.length > most.detail) return `has ${json.detail.length} characters of detail`;
    return null;
  }

  contract(asked, status, type, json) {
    // An empty id is the list, with or without the suffix of a form; any other suffix is an id.
    const found = this.routes.find(r => r.shape.test(asked.path.split("?")[0].replace(/\/\.(json|txt|csv|svg|html|ics|zip|gift)$/i, "").replace(/\/$/, "") || "/"));
    const method = asked.method.toLowerCase();
    const operation = found && this.document.paths[found.route][method];
    if (!operation || status === 304 || status === 408) return null;
    const told = operation.responses[status];
    if (!told) return `answered ${status}, untold`;
    if (!type) return null;
    // Pages for people are told of every address at once.
    if (type === "text/html" && /html|text\/\*|\*\/\*/.test(asked.headers.Accept ?? "")) return null;
    if (!told.content?.[type]) return `answered ${status} as ${type}, untold`;
    if (json === undefined) return null;
    const step = part => part.replaceAll("~", "~0").replaceAll("/", "~1");
    const pointer = ["", "paths", found.route, method, "responses", String(status), "content", type, "schema"].map(step).map(encodeURIComponent).join("/");
    const validate = this.validator(pointer);
    return validate(json) ? null : `departs from the document: ${this.ajv.errorsText(validate.errors).slice(0, 400)}`;
  }
}
