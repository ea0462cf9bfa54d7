// A caller as a booking system would write it. It is only type-checked: what compiles here is what the contract allows.
import type { components, operations } from "./generated";

type Schemas = components["schemas"];
type Cone = operations["getCone"]["parameters"]["path"]["cone"];
type Query = NonNullable<operations["getEndPoint"]["parameters"]["query"]>;
type Json<Operation extends { responses: { 200: { content: { "application/json": unknown } } } }> =
  Operation["responses"][200]["content"]["application/json"];

async function read<Answer>(url: string, init?: RequestInit): Promise<Answer> {
  const response = await fetch(url, { ...init, headers: { accept: "application/json", "content-type": "application/json" } });
  if (!response.ok) throw await problemOf(response);
  return (await response.json()) as Answer;
}

async function problemOf(response: Response): Promise<Error> {
  const problem = (await response.json()) as Schemas["Problem"];
  return new Error(`${problem.type}: ${problem.detail}`);
}

const search = (query: Query) => new URLSearchParams(Object.entries(query)).toString();

export const getCone = (cone: Cone) => read<Json<operations["getCone"]>>(`/v1/cones/${encodeURIComponent(cone)}`);

export const getEndPoint = (cone: Cone, query: Query = {}) =>
  read<Json<operations["getEndPoint"]>>(`/v1/cones/${encodeURIComponent(cone)}/end-point?${search(query)}`);

export const getConeReached = (temperature: string, query: Query = {}) =>
  read<Json<operations["getConeReached"]>>(`/v1/temperatures/${encodeURIComponent(temperature)}/cone?${search(query)}`);

export const convert = (request: Schemas["ConversionRequest"]) =>
  read<Json<operations["convert"]>>("/v1/conversions", { method: "POST", body: JSON.stringify(request) });

export async function look(): Promise<string[]> {
  const cone = await getCone("06");
  const mixUp: string = cone.mixUp?.cone ?? "no other cone has that number";
  const first = cone.endPoints[0];
  const printed: number | undefined = first?.celsius;

  const point = await getEndPoint("6", { rate: "60C/h", chart: "witness-self-supporting" });
  const basis: "printed" | "interpolated" | "extrapolated" | "borrowed" = point.basis;
  const uncertainty: number | null = point.sigmaCelsius;

  const reading = await getConeReached("1222C", { rate: "60C/h" });
  const next: string | null = reading.next;

  const answer = await convert({ units: "C", lines: [{ cone: "05.5", rate: "60C/h" }, { temperature: 1222, rate: 60 }] });
  const refused = answer.lines.flatMap((line) => line.problems.map((problem) => `${line.line}: ${problem.message}`));

  return [mixUp, `${printed}`, basis, `${uncertainty}`, next ?? "past the scale", ...refused];
}

// "06" and "6" are more than two hundred degrees apart; a number cannot tell them apart, so it does not compile.
// @ts-expect-error a cone is text
export const numberInPath = () => getCone(6);

// @ts-expect-error a cone is text in a body too
export const numberInBody = () => convert({ lines: [{ cone: 6 }] });

// @ts-expect-error a misspelt query parameter must not become the default rate
export const misspelt = () => getEndPoint("6", { rat: "60C/h" });

// @ts-expect-error a member that the service would refuse
export const unknownMember = () => convert({ lines: [{ cone: "6", speed: "60C/h" }] });
