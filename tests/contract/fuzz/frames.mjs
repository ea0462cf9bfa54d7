// What no client library sends: requests that are framed wrongly, as bytes on a socket. Each is answered, or its connection closed; never
// by a failure of the service (501 and 505 name what HTTP has and the service has not).
import net from "node:net";

const body = '{"lines":[{"cone":"6"}]}';
const post = (headers, text = body) => `POST /v1/conversions HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: application/json\r\n${headers}\r\n\r\n${text}`;
const get = (target, more = "") => `GET ${target} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n${more}\r\n`;

const frames = [
  "", "\r\n", "\0", "GET\r\n\r\n", "GET /\r\n\r\n", "GET / HTTP/1.1\r\n\r\n", "GET / HTTP/1.0\r\n\r\n", "GET / HTTP/9.9\r\nHost: x\r\n\r\n", "get /v1/cones HTTP/1.1\nHost: x\n\n",
  get("/v1/cones/%00"), get("/v1/cones/%C0%AF"), get("/v1/cones/%ff"), get("/v1/cones/%"), get("/v1/cones/%zz"), get("/%2e%2e/%2e%2e/etc"), get("//v1//cones"), get("/v1/cones/\u00e9"),
  get("http://other/v1/cones/6"), get("*"), "OPTIONS * HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n", get(`/v1/cones/${"9".repeat(20_000)}`), get(`/v1/cones?${"a=1&".repeat(3000)}`),
  get("/v1/cones", `X: ${"y".repeat(40_000)}\r\n`), get("/v1/cones", "A: 1\r\n".repeat(200)), get("/v1/cones", "Bad Header: x\r\n"), get("/v1/cones", "X: a\0b\r\n"), get("/v1/cones", " folded: x\r\n"),
  get("/v1/cones", "Host: y\r\n"), get("/v1/cones", "Accept: \u00ff\u00fe\r\n"), get("/v1/cones", "Accept-Language: \u00ff\r\n"), get("/v1/cones", "If-None-Match: \"\r\n"), get("/v1/cones", "Range: bytes=0-1\r\n"),
  get("/v1/cones", "Content-Length: 5\r\n") + "hello", post(`Content-Length: ${body.length}`), post(`Content-Length: ${body.length + 5}`), post("Content-Length: -1"), post("Content-Length: x"),
  post("Content-Length: 99999999999999999999"), post("Content-Length: 4194305"), post(`Content-Length: ${body.length}\r\nContent-Length: 3`), post("Content-Length: 0", ""), post("", ""),
  post("Transfer-Encoding: chunked", `${body.length.toString(16)}\r\n${body}\r\n0\r\n\r\n`), post("Transfer-Encoding: chunked", "zz\r\n"), post("Transfer-Encoding: chunked", "-1\r\n"),
  post("Transfer-Encoding: chunked", "ffffffffffffffff\r\n"), post("Transfer-Encoding: chunked", `5\r\n${body}\r\n0\r\n\r\n`), post("Transfer-Encoding: chunked", "0\r\n\r\n"), post("Transfer-Encoding: gzip", body),
  post(`Transfer-Encoding: chunked\r\nContent-Length: ${body.length}`, `${body.length.toString(16)}\r\n${body}\r\n0\r\n\r\n`), post("Transfer-Encoding: chunked", `${body.length.toString(16)};x=y\r\n${body}\r\n0\r\nTrailer: x\r\n\r\n`),
  post(`Expect: 100-continue\r\nContent-Length: ${body.length}`), post(`Expect: x\r\nContent-Length: ${body.length}`), post(`Content-Type: text/csv\r\nContent-Length: ${body.length}`), post(`Upgrade: h2c\r\nContent-Length: ${body.length}`),
  "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", "CONNECT x:1 HTTP/1.1\r\nHost: x\r\n\r\n", "TRACE / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n", get("/v1/cones").replace("Connection: close", "Connection: keep-alive") + get("/v1/charts"),
  Buffer.from([0x16, 0x03, 0x01, 0x02, 0x00, 0x01, 0x00, 0x01, 0xfc, 0x03, 0x03]),
];

// How HTTP/2 answers who speaks it: a frame of settings.
const goAway = "\0\0";

function send(address, bytes) {
  return new Promise(resolve => {
    const { hostname, port } = new URL(address);
    const chunks = [];
    const socket = net.connect(Number(port), hostname, () => {
      socket.write(bytes);
      // What waits for more gets no more.
      setTimeout(() => socket.end(), 300);
    });
    socket.setTimeout(10_000, () => socket.destroy());
    socket.on("data", chunk => chunks.push(chunk));
    socket.on("error", () => {});
    socket.on("close", () => resolve(Buffer.concat(chunks).toString("latin1")));
  });
}

// What is wrong with the answers; each names its frame.
export async function frameFaults(address) {
  const faults = [];
  await Promise.all(frames.map(async frame => {
    const bytes = typeof frame === "string" ? Buffer.from(frame, "latin1") : frame;
    const answer = await send(address, bytes);
    const statuses = [...answer.matchAll(/(?:^|\n)HTTP\/1\.[01] (\d{3})/g)].map(m => Number(m[1]));
    if (statuses.some(s => s >= 500 && s !== 501 && s !== 505) || (answer.length > 0 && statuses.length === 0 && !answer.startsWith(goAway))) {
      faults.push(`${JSON.stringify(bytes.toString("latin1").slice(0, 200))} → ${JSON.stringify(answer.slice(0, 200))}`);
    }
  }));
  return { count: frames.length, faults };
}
