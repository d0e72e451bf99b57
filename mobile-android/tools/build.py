#!/usr/bin/env python3
"""Builds and tests the app where there is no Gradle: Python, Maven, a JDK 17 and aapt2 are all it needs.

  build.py fetch                         the packages of deps.lock, by Maven
  build.py check                         compiles with warnings as errors, links, then looks for what neither finds
  build.py test [CLASS[#METHOD] ...]     the tests on real framework code and the real core; all of them, or those named
  build.py pictures                      takes the pictures of mobile-android/pictures anew
  build.py apk                           shrinks with R8, signs with a debug key, and looks into the dex
  build.py minified [--no-rules]         runs the shrunk app; without our rules for R8 it must fail
  build.py main                          compiles only
  build.py bindings                      builds the core and its bindings, and prints their folder

The core and its bindings are taken from $BOLEWALK_BINDINGS (kotlin/, lib/); without it they are built first."""
import os
import pathlib
import shutil
import subprocess
import sys

import packages
import resources
from packages import BUILD, FRAMEWORK, ROOT, TO_RUN, class_path, for_tests, lock, path, run
from steps import step

REPOSITORY = ROOT.parent
TESTS = ROOT / 'app/src/test'
JVM = ['java', '-XX:+UseSerialGC', '-XX:TieredStopAtLevel=1', '-Xshare:auto']
COMPILER = 'org.jetbrains.kotlin.cli.jvm.K2JVMCompiler'


def bindings():
    """The folder with the core's library and its generated Kotlin."""
    if given := os.environ.get('BOLEWALK_BINDINGS'):
        return pathlib.Path(given).absolute()
    folder = pathlib.Path(os.environ.get('CARGO_TARGET_DIR', REPOSITORY / 'target')).absolute() / 'bindings'
    run(REPOSITORY / 'tests/bindings/generate', folder)
    return folder


def kotlin(name, sources, jars, out, extra_inputs=(), flags=()):
    """Compiles Kotlin, warnings being errors; the errors are printed as the compiler gives them."""
    compiler = lock()['kotlinc']
    plugin = next(one for one in compiler if 'compose-compiler' in one)
    tools = ':'.join(str(path(one)) for one in compiler if one != plugin)
    wanted = ':'.join(map(str, jars))

    def go():
        files = [str(file) for source in sources for file in sorted(source.rglob('*.kt'))]
        shutil.rmtree(out, ignore_errors=True) if out.is_dir() else out.unlink(missing_ok=True)
        done = subprocess.run([*JVM, '-Xmx2g', '-cp', tools, COMPILER, '-no-stdlib', '-no-reflect', '-jvm-target', '17',
                               f'-Xplugin={path(plugin)}', *flags, '-cp', wanted, '-d', str(out), *files],
                              capture_output=True, text=True)
        if done.returncode:
            sys.exit(done.stdout + done.stderr)

    step(name, [*sources, *extra_inputs], go, wanted)
    return out


def main(kind='debug'):
    """Compiles the app. Gives back its class path, without the framework."""
    packages.fetch()
    scopes, core = lock(), bindings()
    packages.unpack(scopes['main'] + scopes['test'])
    r = resources.link(kind, for_tests(scopes) if kind == 'debug' else scopes['main'])
    libraries = class_path(scopes['main']) + [path(FRAMEWORK)]
    # Generated code warns; our own must not.
    book = kotlin('bindings', [core / 'kotlin'], libraries, BUILD / 'bindings.jar', flags=['-nowarn'])
    app = kotlin('app', [ROOT / 'app/src/main/kotlin'], [r, book, *libraries], BUILD / 'classes/app', [r], ['-Werror'])
    return [app, r, book]


def settings(kind):
    """The folder that tells the test framework where manifest and resources of a build lie."""
    folder = BUILD / 'settings' / kind
    file = folder / 'com/android/tools/test_config.properties'
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(f'android_merged_manifest={BUILD}/{kind}/AndroidManifest.xml\n'
                    f'android_resource_apk={BUILD}/{kind}/resources.apk\nandroid_custom_package={resources.NAMESPACE}\n')
    return folder


def jvm():
    """The machine that tests run on: with the framework at hand, the core's library, and what both look into."""
    frameworks = BUILD / 'frameworks'
    frameworks.mkdir(exist_ok=True)
    for package in TO_RUN.values():
        if not (at := frameworks / path(package).name).exists():
            at.symlink_to(path(package))
    return [*JVM, '-Xmx3g', f'-Djna.library.path={bindings()}/lib', f'-Dbolewalk.root={REPOSITORY}',
            '-Drobolectric.offline=true', f'-Drobolectric.dependency.dir={frameworks}', '-Drobolectric.graphicsMode=NATIVE',
            '-Drobolectric.pixelCopyRenderMode=hardware', f'-Dbolewalk.pictures={BUILD}/pictures',
            *(f'--add-opens=java.base/java.{name}=ALL-UNNAMED' for name in ('lang', 'util', 'io'))]


def test(names, *flags):
    app, scopes = main(), lock()
    jars = [*app, *class_path(for_tests(scopes))]
    classes = kotlin('tests', [TESTS / 'kotlin'], [*jars, path(FRAMEWORK)], BUILD / 'classes/tests', [app[0]],
                     ['-Werror', f'-Xfriend-paths={app[0]}'])
    names = names or ['.'.join(file.relative_to(TESTS / 'kotlin').with_suffix('').parts)
                      for file in sorted(TESTS.rglob('*Test.kt'))]
    wanted = [classes, settings('debug'), TESTS / 'resources', *jars, path(FRAMEWORK)]  # the framework comes last
    running = BUILD / 'running'  # where tests keep books: what is said of their files is the same on every machine
    running.mkdir(exist_ok=True)
    sys.exit(subprocess.call([*jvm(), *flags, '-cp', ':'.join(map(str, wanted)), f'{resources.NAMESPACE}.RunTests', *names],
                             cwd=running))


if __name__ == '__main__':
    match sys.argv[1:]:
        case ['fetch']:
            packages.fetch()
        case ['main']:
            main()
        case ['apk']:
            import apk
            apk.build(main(), bindings())
        case ['minified', *options] if options in ([], ['--no-rules']):
            import minified
            minified.main(main(), jvm(), settings, not options)
        case ['bindings']:
            print(bindings())
        case ['check']:
            import check
            check.run_checks(main())
        case ['test', *names]:
            test(names)
        case ['pictures']:
            test([f'{resources.NAMESPACE}.ScreensTest'], '-Dbolewalk.pictures.anew=true')
        case _:
            sys.exit(__doc__)
