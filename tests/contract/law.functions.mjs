// Rules on shapes of the contract that a JSONPath alone can't say. Each takes a schema of components.schemas.


const properties = (schema) => Object.entries(schema.properties ?? {});


// A temperature, a difference and a rate answer as twins: celsius beside fahrenheit. A request says either, not both.
function twins(schema) {
  if (schema.additionalProperties === false) return [];
  const names = new Set(properties(schema).map(([name]) => name));
  return properties(schema)
    .filter(([name]) => /(^c|C)elsius(Difference|PerHour)?$/.test(name))
    .map(([name]) => [name, name.replace("Celsius", "Fahrenheit").replace("celsius", "fahrenheit")])
    .filter(([, twin]) => !names.has(twin))
    .map(([name, twin]) => ({ message: `${name} has no twin ${twin}.` }));
}

// Durations are minutes.
function minutes(schema) {
  return properties(schema)
    // Days of the week are a list and no duration.
    .filter(([name, p]) => !p.items && /(?<!kilowatt|Kilowatt)(Hours|Seconds|Days)$|^(hours|seconds|days)$/.test(name))
    .map(([name]) => ({ message: `${name}: durations are …Minutes.` }));
}

// Counting starts at 1, so nothing is called an index.
function counting(schema) {
  return properties(schema).filter(([name]) => /(^i|I)ndex$/.test(name)).map(([name]) => ({ message: `${name}: counting starts at 1; say segment, line or firing.` }));
}

// One name, one meaning, one type.
const types = {
  notes: (p) => p.type === "array" && p.items?.type === "string",
  sources: (p) => p.type === "array" && p.items?.type === "string",
  cone: (p) => [].concat(p.type).includes("string"),
  // Null where no package is in use (health).
  datasetVersion: (p) => [].concat(p.type).includes("string"),
};

function meaning(schema) {
  return properties(schema).filter(([name, p]) => types[name] && !types[name](p)).map(([name]) => ({ message: `${name} has another type than everywhere else.` }));
}

// A list is { datasetVersion, items }, and what it lists has an id and a name.
function envelope(schema, options, context) {
  const name = context.path.at(-1);
  if (!/List$/.test(name)) return [];
  const missing = ["datasetVersion", "items"].filter((p) => !schema.properties?.[p]).map((p) => ({ message: `${name} has no ${p}.` }));
  const item = schema.properties?.items?.items;
  if (!item) return missing;
  const named = item.properties ?? {};
  return [...missing, ...["id", "name"].filter((p) => !named[p]).map((p) => ({ message: `What ${name} lists has no ${p}.` }))];
}

// A detail is flat beside datasetVersion: it does not hold the thing under its own name.
function flat(schema, options, context) {
  const name = context.path.at(-1);
  const thing = /^(.*)Detail$/.exec(name)?.[1];
  if (!thing) return [];
  const member = thing.charAt(0).toLowerCase() + thing.slice(1);
  const own = ["datasetVersion", "id", "name"].filter((p) => !schema.properties?.[p]).map((p) => ({ message: `${name} has no ${p}.` }));
  return schema.properties?.[member] ? [...own, { message: `${name} holds ${member} instead of being flat.` }] : own;
}

// A computed answer has the address of its equation and the confidence of its weakest input; of several at once, each has.
function explained(schema, options) {
  // What has an id is a row of the package, whatever was assumed in telling it.
  if (options.whenHas && (!schema.properties?.[options.whenHas] || schema.properties.id)) return [];
  // A drawn list tells of each item from which row, by which source and how far it can be trusted.
  const item = schema.properties?.items?.items?.properties;
  if (["confidence", "sources", "row"].every((p) => item?.[p])) return [];
  const asked = schema.properties?.answered && schema.properties?.refused ? parts(schema).filter((p) => p !== schema) : [schema];
  const isOne = (s) => s.properties?.explain && s.properties?.confidence;
  if (asked.some(isOne)) return [];
  return ["explain", "confidence"].filter((p) => !asked.some((s) => s.properties?.[p])).map((p) => ({ message: `A computed answer has no ${p}.` }));
}

// A schema and what its members hold, three steps down.
function parts(schema, steps = 3) {
  const own = [schema, ...(schema.oneOf ?? [])];
  if (steps === 0) return own;
  const members = own.flatMap((s) => Object.values(s.properties ?? {})).map((p) => p.items ?? p);
  return [...own, ...members.flatMap((p) => parts(p, steps - 1))];
}

const all = { explained, twins, minutes, counting, meaning, envelope, flat };

export const law = (schema, options, context) => (schema && typeof schema === "object" ? all[options.rule](schema, options, context) : []);
