"""The APK: R8 in full mode over everything, then resources, alignment and a debug signature. Looks into the dex for
what JNA and the bindings need by name. Holds the core only for phones that mobile-android/phone built it for."""
import re
import subprocess
import zipfile

from check import JDK
from packages import BUILD, FRAMEWORK, R8, ROOT, VERSIONS, class_path, lock, path, run, unpacked
from steps import step

OUT = BUILD / 'release'
ABIS = ('arm64-v8a', 'x86_64')
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
NOT_IN_AN_APK = ('META-INF/proguard', 'META-INF/com.android.tools', 'META-INF/maven', 'META-INF/LICENSE', 'META-INF/NOTICE',
                 'META-INF/MANIFEST')


def rules():
    parts = [USUAL, (OUT / 'keep-rules.txt').read_text(), (ROOT / 'app/proguard-rules.pro').read_text()]
    for package in lock()['main']:
        own = unpacked(package) / 'proguard.txt'
        if package.endswith(':aar') and own.exists():
            parts.append(own.read_text())
    file = OUT / 'rules.pro'
    file.write_text('\n'.join(parts))
    return file


def shrink(compiled, core):
    app, r, book = compiled
    jar = OUT / 'app.jar'
    with zipfile.ZipFile(jar, 'w') as out:
        for file in sorted(app.rglob('*')):
            if file.is_file():
                out.write(file, file.relative_to(app))
    done = run('java', '-Xmx3g', '-cp', path(R8), 'com.android.tools.r8.R8', '--release', '--min-api', VERSIONS['minSdk'],
               '--lib', path(FRAMEWORK), '--lib', JDK, '--pg-conf', rules(), '--pg-map-output', OUT / 'mapping.txt',
               '--output', OUT / 'dex.zip', jar, r, book, *class_path(lock()['main']))
    (OUT / 'r8.log').write_text(done.stdout + done.stderr)


def contents(core):
    """What goes into the APK: name, bytes, and whether it is stored as it is."""
    with zipfile.ZipFile(OUT / 'resources.apk') as linked:
        for entry in linked.infolist():
            yield entry.filename, linked.read(entry), entry.compress_type
    with zipfile.ZipFile(OUT / 'dex.zip') as dex:
        for entry in dex.infolist():
            name = entry.filename
            if not entry.is_dir() and not name.startswith(NOT_IN_AN_APK) and not name.endswith(('.kotlin_metadata', '.kotlin_module')):
                yield name, dex.read(entry), zipfile.ZIP_DEFLATED
    libraries = [file for package in lock()['main'] if package.endswith(':aar') for file in unpacked(package).glob('jni/*/*.so')]
    for file in sorted([*libraries, *(core / 'phone').glob('*/*.so')]):
        if file.parent.name in ABIS:
            yield f'lib/{file.parent.name}/{file.name}', file.read_bytes(), zipfile.ZIP_STORED


def sign(raw):
    key, aligned, apk = BUILD / 'debug.keystore', OUT / 'aligned.apk', OUT / 'bolewalk.apk'
    if not key.exists():
        run('keytool', '-genkeypair', '-keystore', key, '-storepass', 'android', '-keypass', 'android', '-alias',
            'androiddebugkey', '-dname', 'CN=Android Debug', '-keyalg', 'RSA', '-keysize', '2048', '-validity', '10000')
    run('zipalign', '-f', '-p', '4', raw, aligned)
    run('apksigner', 'sign', '--ks', key, '--ks-pass', 'pass:android', '--min-sdk-version', VERSIONS['minSdk'], '--out', apk, aligned)
    run('apksigner', 'verify', '--min-sdk-version', VERSIONS['minSdk'], apk)
    return apk


def look_into(apk):
    """JNA finds fields, methods and natives by their names: they must have kept them."""
    with zipfile.ZipFile(apk) as files:
        dex = [name for name in files.namelist() if re.fullmatch(r'classes\d*\.dex', name)]
        files.extractall(OUT / 'dex', dex)
    said = ''.join(run('dexdump', OUT / 'dex' / name).stdout for name in dex)
    classes = {}
    for block in re.split(r"\nClass #\d+ ", said)[1:]:
        name = re.search(r"Class descriptor  : 'L([^;]+);'", block)[1]
        classes[name] = set(re.findall(r"      name          : '([^']+)'", block))
    natives = {name for name in re.findall(r"name          : '(ffi_bolewalk_core_\w+|uniffi_bolewalk_core_\w+)'", said)}
    for owner, member in (('com/sun/jna/Pointer', 'peer'), ('com/sun/jna/Structure', 'read'), ('bolewalk/app/MainActivity', 'onCreate')):
        if member not in classes.get(owner, ()):
            raise SystemExit(f'R8 took {owner}.{member} away')
    structures = [members for name, members in classes.items() if name.startswith('bolewalk/book/') and {'capacity', 'len', 'data'} <= members]
    if not structures or len(natives) < 20:
        raise SystemExit(f'R8 renamed what the bindings need: {len(structures)} buffers, {len(natives)} natives')
    print(f'ok: shrunk app keeps what JNA and the bindings need, {len(natives)} natives among it')


def build(compiled, core):
    inputs = [*compiled, ROOT / 'app/proguard-rules.pro', ROOT / 'tools/apk.py', OUT / 'keep-rules.txt']
    step('shrinking', inputs, lambda: shrink(compiled, core))
    raw = OUT / 'raw.apk'
    with zipfile.ZipFile(raw, 'w') as out:
        for name, data, how in contents(core):
            out.writestr(name, data, how)
    apk = sign(raw)
    look_into(apk)
    print(f'ok: APK of {apk.stat().st_size / 1e6:.1f} MB assembled and signed: {apk}')
