"""Follows the addresses of a service behind a proxy: follow.py ORIGIN PREFIX

Starts at the home page and at addresses of every kind of answer, and asks what they link to: href, src, action, the Link header,
addresses in JSON. All must be under PREFIX of ORIGIN, and answer; nothing may name the host behind the proxy.
"""

import html
import json
import re
import sys
import urllib.error
import urllib.parse
import urllib.request

ORIGIN, PREFIX = sys.argv[1], sys.argv[2]
MOST = 400

# Of each kind of answer one: pages, cards, figures, posters, problems, oEmbed, the document, files of the package, a posted one below.
STARTS = [
    "", "v1", "v1/cones/6", "v1/cones", "v1/cones/06.html", "v1/dataset", "v1/tables", "v1/search?q=bisque", "v1/faults/bloating.html",
    "v1/cones/0", "v1/nothing", "cards", "cards/cone-6", "cards/convert?cone=06&rate=60C/h&size=short", "cards/process/raku-western",
    "cards/fit", "figures/chart.svg", "posters", "posters/cones", "reference", "guide/heat-work", "docs/index.html", "problems",
    "openapi/v1.json", "health/ready", "v1/schedules/bisque-careful/fit?units=C&cone=06",
    "oembed?url=" + urllib.parse.quote(ORIGIN + PREFIX + "cards/cone-6", safe=""),
    "oembed?format=xml&url=" + urllib.parse.quote(ORIGIN + PREFIX + "cards/cone-6", safe=""),
]
# Members of answers that hold addresses of this service.
MEMBERS = {"href", "path", "explain", "url", "self", "type", "next", "card", "page"}


def ask(address, accept="*/*", body=None):
    request = urllib.request.Request(address, data=body, headers={"Accept": accept})
    if body:
        request.add_header("Content-Type", "application/json")
    try:
        with urllib.request.urlopen(request, timeout=60) as answer:
            return answer.status, answer.headers, answer.read(), answer.geturl()
    except urllib.error.HTTPError as refused:
        return refused.code, refused.headers, refused.read(), refused.geturl()


def in_json(value, name=""):
    if isinstance(value, dict):
        for member, inner in value.items():
            yield from in_json(inner, member)
    elif isinstance(value, list):
        for inner in value:
            yield from in_json(inner, name)
    elif isinstance(value, str) and name in MEMBERS and re.match(r"https?://|/", value):
        yield value


def links(headers, body):
    kind = headers.get_content_type()
    for link in headers.get_all("Link") or []:
        yield from re.findall(r"<([^>]*)>", link)
    if "Location" in headers:
        yield headers["Location"]
    text = body.decode("utf-8", "replace")
    if kind in ("text/html", "image/svg+xml", "text/xml", "application/xml"):
        # An address within text that is shown to be copied is encoded twice.
        text = html.unescape(text) if kind == "text/xml" else text
        yield from map(html.unescape, re.findall(r'(?:href|src|action|content)="((?:https?://|/)[^"<]*)"', text))
    elif kind.endswith("json") and kind != "application/openapi+json":
        parsed = json.loads(text)
        if "openapi" in parsed:
            yield from (server["url"] for server in parsed.get("servers", []))
        else:
            yield from in_json(parsed)


def is_own(address):
    return address.startswith("/") or address.startswith("http://127.0.0.1")


def main():
    todo = [(ORIGIN + PREFIX + start, "named here") for start in STARTS]
    seen, faults, pages = {a for a, _ in todo}, [], 0
    while todo and pages < MOST:
        address, found = todo.pop(0)
        pages += 1
        status, headers, body, _ = ask(address, "text/html,*/*;q=0.8" if pages % 2 else "*/*")
        refused = found == "named here" and address.rsplit("/", 1)[-1] in ("0", "nothing")
        if (status != 200) != refused:
            faults.append(f"{status} at {address} ({found})")
        # Cells of tables are as the package has them, before any address of a service.
        is_package = "/v1/tables/" in address or "/data/" in address
        for link in [] if is_package and "json" in headers.get_content_type() else links(headers, body):
            if "{" in link or not is_own(link):
                continue
            target = urllib.parse.urljoin(address, link).split("#")[0]
            if not target.startswith(ORIGIN + PREFIX) and target != ORIGIN + PREFIX.rstrip("/"):
                faults.append(f"{link} at {address} leads out of {PREFIX}")
            elif target not in seen:
                seen.add(target)
                todo.append((target, f"linked at {address}"))
    # The answer to a browser at the bare prefix, and a posted question.
    status, _, _, at = ask(ORIGIN + PREFIX.rstrip("/"))
    if status != 200 or at != ORIGIN + PREFIX:
        faults.append(f"{status} at {at}, for {PREFIX} without its slash")
    status, headers, body, _ = ask(ORIGIN + PREFIX + "v1/loads/check", body=b'{"pieces":[{}]}')
    problem = json.loads(body)
    if not problem["type"].startswith(ORIGIN + PREFIX):
        faults.append(f"a problem's type is {problem['type']}")
    for fault in sorted(set(faults)):
        print(fault)
    if faults:
        sys.exit(1)
    print(f"{pages} addresses under {PREFIX} answered behind nginx, and name only what is under it.")


main()
