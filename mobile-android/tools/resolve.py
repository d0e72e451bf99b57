#!/usr/bin/env python3
"""Writes deps.lock from gradle/libs.versions.toml and the dependencies of app/build.gradle.kts: what Gradle would
take, worked out from the POMs (of each package the highest version that anything asks for).

  resolve.py            writes the lock
  resolve.py --check    fails when the lock does not fit the list of versions"""
import functools
import pathlib
import re
import sys
import xml.etree.ElementTree as ET

from packages import BUILD, CATALOG, MAVEN, ROOT, VERSIONS, maven

POM = '{http://maven.apache.org/POM/4.0.0}'
HEAD = '# Made by tools/resolve.py from gradle/libs.versions.toml and app/build.gradle.kts; do not edit.\n'


def pom_file(key):
    group, name, version = key
    return MAVEN / group.replace('.', '/') / name / version / f'{name}-{version}.pom'


def fetch_poms(keys):
    """Fetches POMs; Maven takes one version of a name in one project. Some of losing versions are not to be had."""
    rest = sorted(key for key in keys if not pom_file(key).exists())
    while rest:
        batch = {key[:2]: key for key in rest}
        rest = [key for key in rest if key not in batch.values()]
        maven([':'.join([*key, 'pom']) for key in batch.values()], BUILD / 'resolve')


def text(element, name):
    child = element.find(POM + name)
    return child.text.strip() if child is not None and child.text else None


class Pom:
    """What a POM says: its packaging, what it needs, what it manages, and its constraints on others."""

    def __init__(self, key):
        root = ET.parse(pom_file(key)).getroot()
        self.values, self.managed = {}, {}
        parent = root.find(POM + 'parent')
        parent_key = tuple(text(parent, part) for part in ('groupId', 'artifactId', 'version')) if parent is not None else None
        if parent_key:
            fetch_poms([parent_key])
            self.values |= pom(parent_key).values
            self.managed |= pom(parent_key).managed
        self.values |= {'project.groupId': key[0], 'project.artifactId': key[1], 'project.version': key[2],
                        'project.parent.version': parent_key[2] if parent_key else ''}
        properties = root.find(POM + 'properties')
        for value in properties if properties is not None else []:
            self.values[value.tag.removeprefix(POM)] = (value.text or '').strip()
        self.packaging = text(root, 'packaging') or 'jar'
        constraints = self.read_managed(root)
        # Packages published for Gradle constrain their siblings; others' lists only fill in versions.
        self.constraints = constraints if 'published-with-gradle-metadata' in pom_file(key).read_text() else []
        self.needs = list(self.read_needs(root))

    def filled(self, said):
        while said and (name := re.search(r'\$\{([^}]+)\}', said)) and name[1] in self.values:
            said = said.replace(name[0], self.values[name[1]])
        return said

    def read_managed(self, root):
        constraints = []
        for one in root.iterfind(f'{POM}dependencyManagement/{POM}dependencies/{POM}dependency'):
            key = tuple(self.filled(text(one, part)) for part in ('groupId', 'artifactId', 'version'))
            if text(one, 'scope') == 'import':
                fetch_poms([key])
                self.managed = pom(key).managed | self.managed
            else:
                self.managed[key[:2]] = key[2]
                constraints.append(key)
        return constraints

    def read_needs(self, root):
        for one in root.iterfind(f'{POM}dependencies/{POM}dependency'):
            if text(one, 'scope') in ('test', 'provided', 'system') or text(one, 'optional') == 'true':
                continue
            name = tuple(self.filled(text(one, part)) for part in ('groupId', 'artifactId'))
            version = self.filled(text(one, 'version')) or self.managed.get(name)
            if version:
                yield *name, version.strip('[]()').split(',')[-1]


@functools.cache
def pom(key):
    return Pom(key)


def rank(version):
    """Orders versions as Gradle does: numbers by size, a preview before its release."""
    previews = ('alpha', 'beta', 'rc', 'dev', 'm')
    return [(2, int(part), '') if part.isdigit() else (0 if part.lower().startswith(previews) else 1, 0, part)
            for part in re.split(r'[.\-+]', version)]


def higher(one, other):
    return one if other is None or rank(one) >= rank(other) else other


def resolve(roots, bom):
    """The version of every package that the roots lead to, by rounds until nothing rises any more."""
    chosen, absent = {}, set()
    while True:
        best, floors, seen, unread = dict(chosen), dict(bom), {}, set()
        queue = list(roots)
        while queue:
            group, name, version = queue.pop()
            version = higher(higher(version, best.get((group, name))), floors.get((group, name)))
            key = (group, name, version)
            best[key[:2]] = version
            if seen.get(key[:2]) == version:
                continue
            seen[key[:2]] = version
            if not pom_file(key).exists():
                unread.add(key)
                continue
            for constraint in pom(key).constraints:
                floors[constraint[:2]] = higher(constraint[2], floors.get(constraint[:2]))
            queue += pom(key).needs
        if unread - absent:
            fetch_poms(unread)
            absent |= {key for key in unread if not pom_file(key).exists()}
            continue
        live = {name: higher(best[name], floors.get(name)) for name in seen}
        if live == chosen:
            return reached(roots, chosen)
        chosen = live


def reached(roots, chosen):
    """What the roots still lead to, now that only the chosen versions count."""
    found, queue = {}, [key[:2] for key in roots]
    while queue:
        name = queue.pop()
        if name not in found:
            found[name] = chosen[name]
            if not pom_file((*name, chosen[name])).exists():
                sys.exit(f'not to be had: {":".join(name)}:{chosen[name]}')
            queue += [key[:2] for key in pom((*name, chosen[name])).needs]
    return found


def packages(found, known=()):
    """Lines for the lock. Of a multiplatform package Android's part counts, else the JVM's; its root only redirects."""
    for (group, name), version in found.items():
        if (group, name + '-android') in found or (group, name + '-jvm') in found:
            continue
        if name.endswith('-jvm') and (group, name.removesuffix('-jvm') + '-android') in found:
            continue
        kind = pom((group, name, version)).packaging
        if kind != 'pom' and (group, name, version) not in known:
            yield f'{group}:{name}:{version}:{"aar" if kind == "aar" else "jar"}'


def library(alias):
    entry = CATALOG['libraries'][alias]
    version = entry.get('version')
    return *entry['module'].split(':'), VERSIONS[version['ref']] if version else None


def asked():
    """The dependencies of app/build.gradle.kts: configuration, package, and `platform` or the type of a variant."""
    said = (ROOT / 'app/build.gradle.kts').read_text()
    for line in said[said.index('\ndependencies {'):].splitlines():
        if found := re.match(r'\s*(\w*[iI]mplementation)\((platform|variantOf)?.*?libs\.([\w.]+)\)', line):
            variant = re.search(r'artifactType\("(\w+)"\)', line)
            yield found[1], library(found[3].replace('.', '-')), variant[1] if variant else found[2]


def locked():
    bom, roots, variants = {}, {'main': [], 'test': []}, {}
    for configuration, key, special in asked():
        if special == 'platform':
            fetch_poms([key])
            bom |= pom(key).managed
    for configuration, (group, name, version), special in asked():
        if special == 'platform':
            continue
        # What only a debug build holds, it holds for the tests.
        scope = 'main' if configuration == 'implementation' else 'test'
        roots[scope].append((group, name, version or bom[(group, name)]))
        if special:
            variants[f'{group}:{name}'] = special
    kotlin = [('org.jetbrains.kotlin', name, VERSIONS['kotlin']) for name in
              ('kotlin-stdlib', 'kotlin-compiler-embeddable', 'kotlin-compose-compiler-plugin-embeddable')]
    main = resolve(roots['main'] + kotlin[:1], bom)
    both = resolve(roots['main'] + roots['test'] + kotlin[:1], bom)
    lines = [f'kotlinc {one}' for one in packages(resolve(kotlin[1:], {}))]
    lines += [f'test {one}' for one in packages(both, {(*name, version) for name, version in main.items()})]
    for one in packages(main):
        variant = variants.get(':'.join(one.split(':')[:2]))
        lines.append('main ' + (one.rsplit(':', 1)[0] + ':' + variant if variant else one))
        if variant:
            lines.append('test ' + one)
    return HEAD + '\n'.join(sorted(lines)) + '\n'


if __name__ == '__main__':
    lock, fresh = ROOT / 'tools/deps.lock', locked()
    if '--check' not in sys.argv:
        lock.write_text(fresh)
    elif lock.read_text() != fresh:
        sys.exit('deps.lock does not fit the list of versions: run mobile-android/tools/resolve.py')
    print(len(fresh.splitlines()) - 1, 'packages')
