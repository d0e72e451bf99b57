"""Runs the shrunk app: R8's class files, by the same rules as the APK's dex, on real framework code and the real core."""
import subprocess
import sys

import shrink
from packages import BUILD, FRAMEWORK, ROOT, class_path, lock, path, run
from shrink import OUT

TESTS = ROOT / 'app/src/minifiedTest/java'
# The test framework calls these by name; in the shrunk app they have other names, or none.
ASKED_BY_TESTS = ('androidx.tracing:', 'androidx.annotation:', 'org.jetbrains.kotlin:kotlin-stdlib:')


def beside_the_app():
    """The packages of the tests that are not in the app, with JNA's natives for this machine."""
    scopes = lock()
    in_app = {one.rsplit(':', 2)[0] for one in scopes['main']}
    own = [one for one in scopes['test'] if one.rsplit(':', 2)[0] not in in_app or one.startswith('net.java.dev.jna')]
    return own + [one for one in scopes['main'] if one.startswith(ASKED_BY_TESTS)]


def build_and_run(compiled, jvm, write_settings, with_rules=True):
    """The exit code of the tests. Without the app's own rules they must fail."""
    jar = shrink.to_classes(compiled, with_rules)
    libraries = [jar, *class_path(beside_the_app()), path(FRAMEWORK)]  # the framework comes last
    classes = BUILD / 'classes/minified'
    classes.mkdir(parents=True, exist_ok=True)
    run('javac', '-nowarn', '-proc:none', '-d', classes, '-cp', ':'.join(map(str, libraries)), *sorted(TESTS.rglob('*.java')))
    settings = write_settings('release')
    return subprocess.call([*jvm, '-cp', ':'.join(map(str, [classes, settings, *libraries])), 'org.junit.runner.JUnitCore', 'MinifiedTest'],
                           stderr=subprocess.STDOUT if with_rules else subprocess.DEVNULL, stdout=None if with_rules else subprocess.DEVNULL)


def main(compiled, jvm, write_settings, with_rules):
    code = build_and_run(compiled, jvm, write_settings, with_rules)
    if with_rules and code == 0:
        print('ok: the shrunk app adds a site by what a screen reader would tap, and the core keeps it')
    if not with_rules and code != 0:
        print('ok: without its own rules the shrunk app fails, so the test sees them')
    sys.exit(code if with_rules else int(code == 0))
