"""The packages that the app is made of: read from deps.lock, fetched by Maven, unpacked, laid out as class paths."""
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tomllib
import zipfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
BUILD = pathlib.Path(os.environ.get('BOLEWALK_ANDROID_BUILD', ROOT / 'build'))
MAVEN = pathlib.Path(os.environ.get('MAVEN_REPOSITORY', pathlib.Path.home() / '.m2/repository'))
RESOLVE = 'org.apache.maven.plugins:maven-dependency-plugin:3.8.1:resolve'
CATALOG = tomllib.loads((ROOT / 'gradle/libs.versions.toml').read_text())
VERSIONS = CATALOG['versions']

# The framework, as the test framework numbers it (its DefaultSdkProvider): to compile against, and to run on.
FRAMEWORK_BUILDS = {'26': '8.0.0_r4-robolectric-r1', '35': '15-robolectric-13954326'}
FRAMEWORK = f'org.robolectric:android-all:{FRAMEWORK_BUILDS[VERSIONS["compileSdk"]]}:jar'
TO_RUN = {sdk: f'org.robolectric:android-all-instrumented:{build}-i7:jar' for sdk, build in FRAMEWORK_BUILDS.items()}
R8 = f'com.android.tools:r8:{VERSIONS["r8"]}:jar'


def run(*command, **options):
    """Runs a command; its words are shown only when it fails, and then the build ends."""
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, **options)
    if done.returncode:
        sys.exit(f'{command[0]} failed\n{done.stdout[-8000:]}{done.stderr[-8000:]}')
    return done


def path(package):
    """Where Maven keeps a package, written group:name:version:type."""
    group, name, version, kind = package.split(':')
    return MAVEN / group.replace('.', '/') / name / version / f'{name}-{version}.{kind}'


def lock():
    """deps.lock: the packages of the app (main), those the tests add or replace (test), and the compiler's."""
    scopes = {'main': [], 'test': [], 'kotlinc': []}
    for line in (ROOT / 'tools/deps.lock').read_text().splitlines():
        if line and not line.startswith('#'):
            scope, package = line.split()
            scopes[scope].append(package)
    return scopes


def maven(packages, folder):
    """Fetches exactly these packages. One version of each name: Maven takes no more in one project."""
    folder.mkdir(parents=True, exist_ok=True)
    wanted = ''
    for package in packages:
        group, name, version, kind = package.split(':')
        wanted += (f'<dependency><groupId>{group}</groupId><artifactId>{name}</artifactId><version>{version}</version>'
                   f'<type>{kind}</type><exclusions><exclusion><groupId>*</groupId><artifactId>*</artifactId>'
                   '</exclusion></exclusions></dependency>')
    (folder / 'pom.xml').write_text(
        '<project xmlns="http://maven.apache.org/POM/4.0.0"><modelVersion>4.0.0</modelVersion><groupId>bolewalk</groupId>'
        '<artifactId>packages</artifactId><version>1</version><packaging>pom</packaging>'
        f'<dependencies>{wanted}</dependencies></project>')
    return subprocess.run(['mvn', '-B', '-q', f'-Dmaven.repo.local={MAVEN}', '-f', str(folder / 'pom.xml'), RESOLVE],
                          capture_output=True, text=True)


def fetch():
    """Fetches what deps.lock names and is not here yet."""
    scopes = lock()
    scopes['main'] += [FRAMEWORK, R8, *TO_RUN.values()]
    for packages in scopes.values():
        # The framework comes in two versions: a project for each version of a name.
        while missing := [one for one in packages if not path(one).exists()]:
            names = {one.rsplit(':', 2)[0]: one for one in missing}
            done = maven(names.values(), BUILD / 'fetch')
            if done.returncode:
                sys.exit(f'Maven could not fetch\n{done.stdout[-4000:]}')


def unpacked(package):
    """The folder of an unpacked AAR."""
    return BUILD / 'aar' / package.replace(':', '_')


def unpack(packages):
    for package in packages:
        folder = unpacked(package)
        if package.endswith(':aar') and not folder.exists():
            aside = folder.with_suffix('.aside')
            shutil.rmtree(aside, ignore_errors=True)
            with zipfile.ZipFile(path(package)) as archive:
                archive.extractall(aside)
            aside.rename(folder)


def class_path(packages):
    jars = []
    for package in packages:
        if package.endswith(':aar'):
            jars += [unpacked(package) / 'classes.jar', *sorted((unpacked(package) / 'libs').glob('*.jar'))]
        else:
            jars.append(path(package))
    return [jar for jar in jars if jar.exists()]


def for_tests(scopes):
    """The test list, then what the app has under names that the test list has not."""
    replaced = {':'.join(package.split(':')[:2]) for package in scopes['test']}
    return scopes['test'] + [one for one in scopes['main'] if ':'.join(one.split(':')[:2]) not in replaced]


def gradle_value(name):
    """A text of app/build.gradle.kts, such as the application's id."""
    return re.search(rf'{name} = "([^"]+)"', (ROOT / 'app/build.gradle.kts').read_text())[1]
