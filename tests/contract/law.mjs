// The law of names and shapes, as far as a document shows it, as a Spectral ruleset. Run by `npm run law`.
import { enumeration, schema, undefined as absent } from "@stoplight/spectral-functions";
import { law } from "./law.functions.mjs";

const shape = (rule, description) => ({ description, severity: "error", given: "$.components.schemas.*", then: { function: law, functionOptions: { rule } } });
const gone = (property, description, where = ".*") => ({ description, severity: "error", given: `$.components.schemas${where}.properties`, then: { field: property, function: absent } });
// What is computed is asked by POST, or assumes what was left out.
const computed = (given, whenHas) => ({ description: "A computed answer says by what, and how far it can be trusted", severity: "error", given, then: { function: law, functionOptions: { rule: "explained", whenHas } } });
const body = "$.paths.*.post.requestBody.content['application/json']";

export default {
  rules: {
    "law-twins": shape("twins", "Temperatures, differences and rates answer as twins"),
    "law-minutes": shape("minutes", "Durations are minutes"),
    "law-counting": shape("counting", "Counting starts at 1"),
    "law-meaning": shape("meaning", "One name has one type"),
    "law-envelope": shape("envelope", "A list is datasetVersion and items, each with id and name"),
    "law-flat": shape("flat", "A detail is flat"),
    "law-explained": computed("$.paths.*.post.responses['200'].content['application/json'].schema"),
    "law-explained-look-ups": computed("$.paths.*.get.responses['200'].content['application/json'].schema", "assumed"),
    // A shelf and a wall have a thickness, a piece has a thickest place.
    "law-thickest": gone("thicknessMillimetres", "The thickness of a piece is thickestMillimetres", "[?(!@property.match(/^Kiln(Shelves|Wall)$/))]"),
    "law-kind": gone("kind", "kind stands with a noun"),
    "law-field": gone("field", "A finding has a pointer or a parameter", ".Finding"),
    "law-closed": { description: "Request schemas are closed", severity: "error", given: `${body}.schema`, then: { field: "additionalProperties", function: enumeration, functionOptions: { values: [false] } } },
    "law-examples": { description: "A request has a minimal and a full example", severity: "error", given: body, then: { field: "examples", function: schema, functionOptions: { schema: { type: "object", required: ["minimal", "full"] } } } },
  },
};
