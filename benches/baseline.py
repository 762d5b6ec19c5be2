"""The pages of a site by a short script: tomllib, csv, markdown and jinja2, without checks or figures.

Usage: baseline.py SITE PROJECT. The last line it prints is seconds, seconds on the processor, megabytes at the peak.
"""
import csv
import pathlib
import resource
import sys
import time

try:
    import tomllib

    import jinja2
    import markdown
except ImportError as missing:
    print(f"skipped: python3 lacks {missing.name}", file=sys.stderr)
    sys.exit(1)

PAGE = """<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ title }}</title></head><body><h1>{{ title }}</h1>
{{ words }}
{% macro facts(table, level) %}<dl>{% for key, value in table.items() %}<div><dt>{{ key }}</dt><dd>
{%- if value is mapping %}{{ facts(value, level + 1) }}
{%- elif value is iterable and value is not string %}<ul>{% for one in value %}<li>{% if one is mapping %}{{ facts(one, level + 1) }}{% else %}{{ one }}{% endif %}</li>{% endfor %}</ul>
{%- else %}{{ value }}{% endif %}</dd></div>{% endfor %}</dl>{% endmacro %}{{ facts(data, 2) }}
{% if log %}<table><thead><tr>{% for head in log[0] %}<th scope="col">{{ head }}</th>{% endfor %}</tr></thead><tbody>
{% for row in log[1:] %}<tr>{% for cell in row %}<td data-label="{{ log[0][loop.index0] }}">{{ cell }}</td>{% endfor %}</tr>
{% endfor %}</tbody></table>{% endif %}</body></html>
"""


def main():
    start = time.perf_counter()
    site, project = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
    out = site / "script"
    page = jinja2.Environment(autoescape=True).from_string(PAGE)

    def write(path, title, data, words="", log=()):
        place = out / path
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_text(page.render(title=title, data=data, words=jinja2.utils.markupsafe.Markup(words), log=log))

    index = {}
    for file in sorted((project / "species").glob("*.toml")):
        data = tomllib.loads(file.read_text())
        words = file.with_suffix(".md")
        if not words.exists():
            continue
        html = markdown.markdown(words.read_text(), extensions=["tables", "footnotes"])
        title = data.get("name", file.stem)
        index[file.stem] = title
        write(f"public/species/{file.stem}/index.html", title, data, html)
        write(f"public/species/{file.stem}/card.html", title, data)
    for file in sorted((site / "animals").glob("*.toml")):
        data = tomllib.loads(file.read_text())
        with file.with_suffix(".csv").open(newline="") as lines:
            log = list(csv.reader(lines))
        title = data["name"]
        write(f"private/animals/{file.stem}/record.html", title, data, log=log)
        write(f"private/animals/{file.stem}/handover.html", title, data, log=log[:1] + log[-40:])
        write(f"private/animals/{file.stem}/door.html", title, data)
        if data.get("publish"):
            index[file.stem] = title
            write(f"public/animals/{file.stem}/index.html", title, data)
    write("public/index.html", "Index", index)
    used = resource.getrusage(resource.RUSAGE_SELF)
    print(time.perf_counter() - start, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)


main()
