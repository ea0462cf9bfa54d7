// Values of requests: what a schema of the document asks for, its bounds, and what it does not allow.

// Texts that readers have stumbled over: other digits, other blanks, what looks alike, halves of characters, long ones.
export const oddTexts = [
  "", " ", "\u00a0", "\u2003", "0", "00", "000", "-0", "+6", "-6", "\u22126", "06", "6", "o6", "^6", "Δ6", "cone 6", "CONE 06", "05½", "05 1/2",
  "05.5", "6.0", "6a", "6A", "0.5", "½", "1e3", "٣", "０６", "１２２２C", "𝟙𝟚C", "1222C", "2232F", "1495K", "1222 °C", "1222℃", "1,222C", "1.222,5C",
  "60C/h", "108 °F/h", "1C/min", "60", "0C/h", "-60C/h", "1e400", "NaN", "Infinity", "-Infinity", "∞", "null", "true", "[]", "{}", "\"", "'", "\\",
  "\u0000", "\u0001", "\u001f", "\u007f", "\u0085", "\u202e6", "\ufeff6", "\ud800", "\udc00\ud800", "é", "e\u0301", "ß", "İ", "ı", "ﬁ", "🔥", "👩🏽‍🎨", "日本", "../..", "%00", "%2e%2e",
  "<script>", "=1+1", "@SUM(A1)", "{name}", "{count, plural, one {#}}", "C", "F", "K", "c", "f", "°C", "2026-12-04T18:00:00+01:00", "2026-13-40T99:99:99Z",
  "2026-02-30T10:00:00Z", "0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59Z", "2026-12-04", "1970-01-01T00:00:00Z",
];

export const oddNumbers = [
  0, -0, 1, -1, 2, 0.5, -0.5, 6, 20, 60, 100, 1000, 1222, 1500, 1500.0001, 2732, 1e3, 1e9, 1e15, 1e21, 1e28, 1e29, 1e300, -1e300, 5e-324, 1e-9, 2147483647,
  2147483648, -2147483649, 9007199254740993, 0.1 + 0.2, 1222.3000000000002,
];

// JSON that JSON.stringify can't write; stands in its place as a marked text.
const rawJson = ["1e400", "-1e400", "1E-400", "0.10000000000000000000000000000000001", "123456789012345678901234567890", "-0.0", "1.2e3", "12E2", '"\\ud800"', '"\\u0000"'];
const mark = "\u2063raw:";

export const raw = chance => mark + chance.below(rawJson.length);

// The text of a body, with what was marked put in.
export const write = body => JSON.stringify(body)?.replaceAll(new RegExp(`"${mark}(\\d+)"`, "g"), (_, at) => rawJson[at]) ?? "";

export function junk(chance, depth = 0) {
  switch (chance.below(depth > 3 ? 7 : 10)) {
    case 0: return null;
    case 1: return chance.is(0.5);
    case 2: case 3: return chance.one(oddNumbers);
    case 4: case 5: return chance.one(oddTexts);
    case 6: return raw(chance);
    case 7: return Array.from({ length: chance.below(4) }, () => junk(chance, depth + 1));
    case 8: return { [chance.one(oddTexts)]: junk(chance, depth + 1) };
    default: return chance.one(oddTexts).repeat(1 + chance.below(300));
  }
}

export class Values {
  // words: texts by the name of the member that they are meant for.
  constructor(document, words) {
    this.document = document;
    this.words = words;
  }

  resolve(schema) {
    return schema.$ref ? this.resolve(this.document.components.schemas[schema.$ref.split("/").at(-1)]) : schema;
  }

  // A value of a schema. valid: as it asks; edge: at and beside its bounds; wild: now and then what it does not allow.
  of(schema, chance, how, name = "", depth = 0) {
    if (how === "wild" && chance.is(0.12)) return junk(chance);
    const branches = schema.oneOf ?? schema.anyOf;
    if (branches) return this.of(chance.one(branches), chance, how, name, depth);
    schema = this.resolve(schema);
    if (schema.oneOf ?? schema.anyOf) return this.of(schema, chance, how, name, depth);
    const types = [schema.type ?? (schema.properties ? "object" : "string")].flat().filter(t => t !== "null");
    if (depth > 0 && [schema.type].flat().includes("null") && chance.is(0.05)) return null;
    if (schema.enum) return chance.one(schema.enum);
    switch (chance.one(types)) {
      case "object": return this.object(schema, chance, how, depth);
      case "array": return this.array(schema, chance, how, name, depth);
      case "boolean": return chance.is(0.5);
      case "integer": return Math.round(this.number(schema, chance, how));
      case "number": return this.number(schema, chance, how);
      default: return this.text(chance, how, name);
    }
  }

  object(schema, chance, how, depth) {
    const made = {};
    for (const [name, member] of Object.entries(schema.properties ?? {})) {
      if (schema.required?.includes(name) ? how !== "wild" || chance.is(0.9) : chance.is(0.45)) made[name] = this.of(member, chance, how, name, depth + 1);
    }
    if (how === "wild" && chance.is(0.03)) made[chance.one([...Object.keys(this.words), ...oddTexts])] = junk(chance);
    return made;
  }

  array(schema, chance, how, name, depth) {
    const { minItems: least = 0, maxItems: most = 40 } = schema;
    let length = Math.min(most, least + chance.below(4));
    if (how !== "valid" && chance.is(0.1)) length = chance.one([0, least - 1, Math.min(most, 200), most < 200 ? most + 1 : 60].filter(n => n >= 0));
    if (depth > 2) length = Math.min(length, 40);
    return Array.from({ length }, () => this.of(schema.items, chance, how, name, depth + 1));
  }

  number(schema, chance, how) {
    const low = schema.minimum ?? schema.exclusiveMinimum ?? 0, high = schema.maximum ?? 2000;
    if (how === "valid" || chance.is(0.5)) return Math.round((low + (high - low) * chance.next() ** 2) * 10) / 10;
    const step = chance.one([0, 1e-9, 0.1, 1, 100]);
    if (how === "edge") return chance.one([low, high, low + step, high - step, low - step, high + step]);
    return chance.one(oddNumbers);
  }

  text(chance, how, name) {
    const words = this.words[name];
    if (words?.length && chance.is(how === "valid" ? 0.97 : 0.7)) return chance.one(words);
    return how === "valid" ? chance.one(["6", "06", "C", "1222C", "60C/h", "bisque-careful"]) : chance.one(oddTexts);
  }

  // Something of a body changed, anywhere in it.
  mutate(body, chance) {
    const places = [];
    const walk = (holder, key) => {
      places.push([holder, key]);
      const value = holder[key];
      if (value && typeof value === "object") for (const inner of Object.keys(value)) walk(value, inner);
    };
    const root = { body: structuredClone(body) };
    walk(root, "body");
    for (let times = 1 + chance.below(3); times > 0; times--) {
      const [holder, key] = chance.one(places);
      const value = holder[key];
      switch (chance.below(7)) {
        case 0: if (key !== "body") delete holder[key]; break;
        case 1: holder[key] = junk(chance); break;
        case 2: holder[key] = chance.one(this.words[key] ?? oddTexts); break;
        case 3: holder[key] = typeof value === "number" ? value * chance.one([-1, 0, 0.5, 2, 10, 1e6]) : String(value); break;
        case 4: if (Array.isArray(value)) holder[key] = [...value, ...value, ...value]; else holder[key] = [value]; break;
        case 5: if (value && typeof value === "object" && !Array.isArray(value)) value[chance.one(Object.keys(this.words))] = junk(chance); break;
        default: holder[key] = typeof value === "number" ? raw(chance) : chance.one(oddTexts); break;
      }
    }
    return root.body;
  }
}
