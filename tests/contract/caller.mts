// A caller as a booking system would write it, over the client types made of the document: what compiles here is what the contract
// allows, and what runs here is what the service answers. Run with the address of a service in CONESERVICE.
import createClient from "openapi-fetch";
import type { components, paths } from "./generated.js";

declare const process: { env: Record<string, string | undefined> };

const baseUrl = process.env["CONESERVICE"];
if (!baseUrl) throw new Error("CONESERVICE names no service.");
const client = createClient<paths, "application/json" | "application/problem+json">({ baseUrl });

function expect(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(`Not so: ${what}`);
}

// The answer, or the problem's own words.
async function answer<T>(asked: Promise<{ data?: T; error?: components["schemas"]["Problem"] }>): Promise<T> {
  const { data, error } = await asked;
  if (data === undefined) throw new Error(`${error?.type}: ${error?.detail}`);
  return data;
}

async function run(): Promise<void> {
  // The published chart of self-supporting cones prints 998 °C for cone 06 and 1222 °C for cone 6 at 60 °C/h.
  const query = { rate: "60C/h", chart: "witness-self-supporting" };
  const endPoint = (cone: string) => answer(client.GET("/v1/cones/{cone}/end-point", { params: { path: { cone }, query } }));
  const six = await endPoint("6");
  const basis: "printed" | "interpolated" | "extrapolated" | "borrowed" = six.basis;
  const uncertainty: number | null = six.sigmaCelsiusDifference;
  expect(six.celsius === 1222 && basis === "printed", `cone 6 is 1222 °C, not ${six.celsius} (${basis}, ${uncertainty})`);
  const zeroSix = await endPoint("06");
  expect(zeroSix.celsius === 998, `cone 06 is 998 °C, not ${zeroSix.celsius}`);

  const cone = await answer(client.GET("/v1/cones/{cone}", { params: { path: { cone: "06" } } }));
  const mixUp: string | undefined = cone.mixUp?.cone;
  expect(mixUp === "6", "cone 06 is easily mixed up with cone 6");

  const reading = await answer(client.GET("/v1/temperatures/{temperature}/cone", { params: { path: { temperature: "1222C" }, query } }));
  expect(reading.reached === "6", `1222 °C reaches cone 6, not ${reading.reached}`);

  const converted = await answer(client.POST("/v1/conversions", {
    body: { units: "C", lines: [{ cone: "6", rate: "60C/h" }, { temperature: 998, rate: 60 }, { cone: "0" }] },
  }));
  const refused = converted.lines.flatMap((line) => line.problems.map((problem) => `${line.line}: ${problem.message}`));
  expect(converted.answered === 2 && refused.length === 1, "a bad line spoils no other");

  const solved = await answer(client.POST("/v1/heat-work/solve", {
    body: { units: "C", cone: "6", find: "peak", segments: [{ rate: 60 }] },
  }));
  expect(solved.feasible && Math.abs((solved.celsius ?? 0) - 1222) < 8, `60 °C/h puts cone 6 down near 1222 °C, not ${solved.celsius}`);

  const dataset = await answer(client.GET("/v1/dataset"));
  const body = await answer(client.GET("/v1/clay-bodies/{id}", { params: { path: { id: "red-earthenware" } } }));
  const same = JSON.stringify(dataset).includes(six.datasetVersion) && body.datasetVersion === six.datasetVersion;
  expect(same, "all answer from the same data");

  const load = await answer(client.POST("/v1/loads/check", {
    body: {
      kiln: { heat: "electric", maxCone: "8", atmospheres: ["oxidation"] },
      firing: { firingKind: "glaze", cone: "6", atmosphere: "oxidation" },
      pieces: [{ id: "mug", body: "red-earthenware", state: "bisqued" }],
    },
  }));
  expect(load.verdict === "refuse", "red earthenware does not stand cone 6");

  const colours = await answer(client.POST("/v1/colours/resolve/batch", {
    body: { items: [{ colorants: [{ colorant: "copper", percent: 0.5 }] }, { colorants: [{ colorant: "coper" }] }] },
  }));
  expect(colours.answered === 1 && colours.refused === 1, "a bad recipe spoils no other");

  const fit = await answer(client.POST("/v1/schedules/{schedule}/fit", {
    params: { path: { schedule: "mid-range-glaze" } }, body: { cone: "6", units: "C" },
  }));
  expect(fit.cautions.length > 0, "a programme comes with its cautions");

  const { error } = await client.GET("/v1/cones/{cone}", { params: { path: { cone: "0" } } });
  expect(error?.status === 400 && error.detail.length > 0, "cone 0 is refused in words for people");

  console.log("Ten routes answered the client of openapi-fetch.");
}

// "06" and "6" are more than two hundred degrees apart; a number cannot tell them apart, so it does not compile.
// @ts-expect-error a cone is text
export const numberInPath = () => client.GET("/v1/cones/{cone}", { params: { path: { cone: 6 } } });

// @ts-expect-error a cone is text in a body too
export const numberInBody = () => client.POST("/v1/conversions", { body: { lines: [{ cone: 6 }] } });

// @ts-expect-error a misspelt query parameter must not become the default rate
export const misspelt = () => client.GET("/v1/cones/{cone}/end-point", { params: { path: { cone: "6" }, query: { rat: "60C/h" } } });

// @ts-expect-error a member that the service would refuse
export const unknownMember: components["schemas"]["ConversionLine"] = { cone: "6", speed: "60C/h" };

// @ts-expect-error without its units a programme is refused
export const withoutUnits = () => client.POST("/v1/heat-work", { body: { segments: [{ rate: 60, target: 1222 }] } });

const firing = { firingKind: "glaze", cone: "6", atmosphere: "oxidation" } as const;
const kiln: Pick<components["schemas"]["Kiln"], "heat" | "atmospheres"> = { heat: "electric", atmospheres: ["oxidation"] };

// @ts-expect-error a load needs to know how hot its kiln may become
export const withoutMaxCone = () => client.POST("/v1/loads/check", { body: { kiln, firing, pieces: [] } });

await run();
