"""Resources and manifest: merged, compiled and linked by aapt2 into an APK without code, with its R classes."""
import re
import shutil
import xml.etree.ElementTree as ET
import zipfile

import framework
from packages import BUILD, FRAMEWORK, ROOT, VERSIONS, gradle_value, path, run, unpacked
from steps import step

ANDROID = '{http://schemas.android.com/apk/res/android}'
SOURCES = ROOT / 'app/src/main'
NAMESPACE = gradle_value('namespace')


def manifest_of(file):
    return ET.fromstring(file.read_text().replace('${applicationId}', gradle_value('applicationId')))


def merge_manifest(out, libraries, debuggable):
    """The app's manifest with the permissions and components of its libraries: a small part of what Gradle's merger
    does, without its markers and conflicts."""
    ET.register_namespace('android', ANDROID[1:-1])
    merged = manifest_of(SOURCES / 'AndroidManifest.xml')
    app = merged.find('application')
    merged.set('package', NAMESPACE)
    for element in app.iter():
        if (name := element.get(ANDROID + 'name', '')).startswith('.'):
            element.set(ANDROID + 'name', NAMESPACE + name)
    app.set(ANDROID + 'appComponentFactory', 'androidx.core.app.CoreComponentFactory')
    if debuggable:
        app.set(ANDROID + 'debuggable', 'true')
    have = {(one.tag, one.get(ANDROID + 'name')): one for one in [*merged, *app]}
    for library in libraries:
        file = unpacked(library) / 'AndroidManifest.xml'
        if not file.exists():
            continue
        root = manifest_of(file)
        for parent, source in ((merged, root), (app, root.find('application'))):
            for element in source if source is not None else []:
                key = (element.tag, element.get(ANDROID + 'name'))
                if element.tag in ('application', 'uses-sdk'):
                    continue
                if key not in have:
                    have[key] = element
                    parent.append(element)
                elif element is not have[key]:
                    names = {child.get(ANDROID + 'name') for child in have[key]}
                    have[key].extend(child for child in element if child.get(ANDROID + 'name') not in names)
    for element in merged.iter():
        for marker in [key for key in element.attrib if 'schemas.android.com/tools' in key]:
            del element.attrib[marker]
    merged[:] = [one for one in merged if one is not app] + [app]
    ET.ElementTree(merged).write(out, encoding='utf-8', xml_declaration=True)


def package_of(library):
    file = unpacked(library) / 'AndroidManifest.xml'
    return re.search(r'package="([^"]+)"', file.read_text())[1] if file.exists() else None


def compiled(libraries):
    """The resources of the libraries and of the app, compiled: a zip each."""
    flat = BUILD / 'flat'
    flat.mkdir(parents=True, exist_ok=True)
    zips = []
    for library in libraries:
        folder, out = unpacked(library) / 'res', flat / (unpacked(library).name + '.zip')
        if folder.is_dir() and any(folder.iterdir()):
            if not out.exists():
                run('aapt2', 'compile', '--dir', folder, '-o', out)
            zips.append(out)
    own = flat / 'app.zip'
    step('resources', [SOURCES / 'res'], lambda: run('aapt2', 'compile', '--dir', SOURCES / 'res', '-o', own))
    return [*zips, own]


def r_classes(out):
    """R of the app and of every library, compiled; without dates, so that the same R gives the same bytes."""
    classes = out / 'r'
    shutil.rmtree(classes, ignore_errors=True)
    run('javac', '-nowarn', '-proc:none', '--release', '11', '-d', classes, *sorted((out / 'java').rglob('*.java')))
    with zipfile.ZipFile(out / 'r.jar', 'w') as jar:
        for file in sorted(classes.rglob('*.class')):
            jar.writestr(zipfile.ZipInfo(str(file.relative_to(classes))), file.read_bytes())


def link(kind, packages):
    """Links for `debug` or `release`: build/<kind>/resources.apk, r.jar, keep-rules.txt, AndroidManifest.xml."""
    libraries = [one for one in packages if one.endswith(':aar')]
    zips, out = compiled(libraries), BUILD / kind
    frame = BUILD / f'framework-{VERSIONS["compileSdk"]}.apk'
    if not frame.exists():
        framework.convert(path(FRAMEWORK), frame)

    def go():
        shutil.rmtree(out / 'java', ignore_errors=True)
        (out / 'java').mkdir(parents=True)
        merge_manifest(out / 'AndroidManifest.xml', libraries, kind == 'debug')
        others = sorted({package_of(one) for one in libraries} - {None, NAMESPACE})
        # An old aapt2 knows no <queries>; final ids would be copied by the compiler from one build into the other.
        run('aapt2', 'link', '-I', frame, '--manifest', out / 'AndroidManifest.xml', '-o', out / 'resources.apk',
            '--auto-add-overlay', '--warn-manifest-validation', '--non-final-ids', '--java', out / 'java',
            '--extra-packages', ':'.join(others), '--proguard', out / 'keep-rules.txt',
            '--min-sdk-version', VERSIONS['minSdk'], '--target-sdk-version', VERSIONS['targetSdk'],
            '--version-code', '1', '--version-name', gradle_value('versionName'),
            *(part for one in zips for part in ('-R', one)))
        r_classes(out)

    step(f'{kind} link', [zips[-1], SOURCES / 'AndroidManifest.xml', ROOT / 'tools/resources.py'], go, ' '.join(packages))
    return out / 'r.jar'
