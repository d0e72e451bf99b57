"""R8 in full mode over the app and its libraries, by the rules that Gradle would give it: to dex for the APK, to class
files for running the shrunk app under the test framework."""
import zipfile

import resources
from check import JDK
from packages import BUILD, FRAMEWORK, R8, ROOT, VERSIONS, class_path, lock, path, run, unpacked
from steps import step

OUT = BUILD / 'release'
# What the Android plugin's proguard-android-optimize.txt says, shortened.
USUAL = '''-allowaccessmodification
-keepattributes AnnotationDefault,EnclosingMethod,InnerClasses,RuntimeVisible*Annotations,Signature
-keepclassmembers enum * { public static **[] values(); public static ** valueOf(java.lang.String); }
-keepclassmembers class * implements android.os.Parcelable { public static final ** CREATOR; }
-keepclasseswithmembernames,includedescriptorclasses class * { native <methods>; }
-keep @interface androidx.annotation.Keep
-keep @androidx.annotation.Keep class * { *; }
-keepclasseswithmembers class * { @androidx.annotation.Keep <methods>; }
-keepclasseswithmembers class * { @androidx.annotation.Keep <fields>; }
'''


def rules(own):
    parts = [USUAL, (OUT / 'keep-rules.txt').read_text()]
    for package in lock()['main']:
        brought = unpacked(package) / 'proguard.txt'
        if package.endswith(':aar') and brought.exists():
            parts.append(brought.read_text())
    if own:
        parts.append((ROOT / 'app/proguard-rules.pro').read_text())
    file = OUT / ('rules.pro' if own else 'rules-without-own.pro')
    file.write_text('\n'.join(parts))
    return file


def shrink(compiled, out, *kind, own=True):
    """Shrinks what `compiled` holds, the app and the bindings, into `out`."""
    app, _, book = compiled
    r = resources.link('release', lock()['main'])
    given, rule_file = [r, book, *class_path(lock()['main'])], rules(own)

    def go():
        jar = OUT / 'app.jar'
        with zipfile.ZipFile(jar, 'w') as packed:
            for file in sorted(app.rglob('*')):
                if file.is_file():
                    packed.write(file, file.relative_to(app))
        out.unlink(missing_ok=True)
        done = run('java', '-Xmx3g', '-cp', path(R8), 'com.android.tools.r8.R8', '--release', '--lib', path(FRAMEWORK),
                   '--lib', JDK, '--pg-conf', rule_file, '--pg-map-output', OUT / 'mapping.txt', '--output', out, *kind, jar,
                   *given)
        (OUT / 'r8.log').write_text(done.stdout + done.stderr)

    step(f'shrinking {out.stem}', [app, r, book, rule_file], go, ' '.join(kind))
    return out


def to_dex(compiled):
    return shrink(compiled, OUT / 'dex.zip', '--min-api', VERSIONS['minSdk'])


def to_classes(compiled, own):
    return shrink(compiled, OUT / ('shrunk.jar' if own else 'shrunk-without-rules.jar'), '--classfile', own=own)
