"""What Gradle's lint would say and nothing else here does: missing permissions, calls newer than the oldest system the
app runs on; and words that stand in the shell."""
import os
import pathlib
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
import zipfile

import resources
from packages import BUILD, R8, ROOT, TO_RUN, VERSIONS, class_path, gradle_value, lock, path
from resources import ANDROID, SOURCES
from steps import step

JDK = os.environ.get('JAVA_HOME') or str(pathlib.Path('/usr/bin/javac').resolve().parent.parent)


def wrong_words():
    """The shell has no words but the app's name: all others come from the core, in every language."""
    for file in sorted((SOURCES / 'res').glob('values*/*.xml')):
        for element in ET.parse(file).getroot():
            if element.tag in ('string', 'string-array', 'plurals') and element.get('name') != 'app_name':
                yield f'{file.parent.name}: {element.get("name")} is a word of its own'


def wrong_manifest():
    manifest = ET.parse(SOURCES / 'AndroidManifest.xml').getroot()
    for component in manifest.find('application'):
        if component.find('intent-filter') is not None and component.get(ANDROID + 'exported') is None:
            yield f'manifest: {component.get(ANDROID + "name")} does not say whether it is exported'
    asked = {element.get(ANDROID + 'name') for element in manifest.iter('uses-permission')}
    code = '\n'.join(file.read_text() for file in (SOURCES / 'kotlin').rglob('*.kt'))
    for permission in sorted(set(re.findall(r'Manifest\.permission\.([A-Z_]+)', code))):
        if f'android.permission.{permission}' not in asked:
            yield f'manifest: {permission} is used and not declared'


def wrong_release(file):
    """The merged manifest of the app as it is given away: what our own and the libraries' manifests ask for together."""
    manifest = ET.parse(file).getroot()
    allowed = {f'android.permission.{one}' for one in ('ACCESS_FINE_LOCATION', 'ACCESS_COARSE_LOCATION', 'CAMERA')}
    allowed.add(gradle_value('applicationId') + '.DYNAMIC_RECEIVER_NOT_EXPORTED_PERMISSION')
    for permission in sorted({one.get(ANDROID + 'name') for one in manifest.iter('uses-permission')} - allowed):
        yield f'manifest: {permission} is asked for; nothing leaves the phone by itself, and no more is read than the work needs'
    for component in manifest.find('application'):
        name = component.get(ANDROID + 'name')
        if component.get(ANDROID + 'exported') == 'true' and not component.get(ANDROID + 'permission') and not name.endswith('.MainActivity'):
            yield f'manifest: {name} is open to every app'


def newer_calls(app, r, book):
    """Calls that the oldest system lacks; tools/newer-api.txt lists those that are guarded."""
    jar = BUILD / 'app.jar'
    with zipfile.ZipFile(jar, 'w') as out:
        for file in sorted(app.rglob('*.class')):
            out.write(file, file.relative_to(app))
    targets = [part for one in [r, *class_path(lock()['main'])] for part in ('--target', str(one))]
    done = subprocess.run(['java', '-Xmx2g', '-cp', str(path(R8)), 'com.android.tools.r8.tracereferences.TraceReferences',
                           '--check', '--lib', str(path(TO_RUN[VERSIONS['minSdk']])), '--lib', JDK, *targets,
                           '--source', str(jar), '--source', str(book)], capture_output=True, text=True)
    allowed = ROOT / 'tools/newer-api.txt'
    guarded = allowed.read_text().split() if allowed.exists() else []
    missing = sorted({line for line in done.stderr.splitlines() if line.startswith('Error: Missing')
                      and not any(one in line for one in guarded)})
    if missing or (done.returncode and 'Error: Missing' not in done.stderr):
        sys.exit('newer than the oldest system:\n' + '\n'.join(missing or [done.stderr[-3000:]]))


def run_checks(compiled):
    resources.link('release', lock()['main'])
    if wrong := [*wrong_words(), *wrong_manifest(), *wrong_release(BUILD / 'release/AndroidManifest.xml')]:
        sys.exit('\n'.join(wrong))
    step('newer calls', [compiled[0], compiled[2], ROOT / 'tools'], lambda: newer_calls(*compiled))
    print('ok: warnings, words, manifest, calls newer than the oldest system')
