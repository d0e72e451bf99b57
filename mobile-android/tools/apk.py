"""The APK: the shrunk app, its resources, JNA and the core for every phone that mobile-android/phone built it for;
aligned, and signed with a debug key. Looks into the dex for what JNA and the bindings need by name."""
import re
import sys
import zipfile

import shrink
from check import wrong_release
from packages import BUILD, VERSIONS, lock, run, unpacked
from shrink import OUT

ABIS = ('arm64-v8a', 'armeabi-v7a', 'x86_64')
NOT_IN_AN_APK = ('META-INF/proguard', 'META-INF/com.android.tools', 'META-INF/maven', 'META-INF/LICENSE', 'META-INF/NOTICE',
                 'META-INF/MANIFEST', 'META-INF/versions')


def libraries(core):
    """JNA's libraries and the core's. With the core for some phones only, the APK is for those only."""
    built = {file.parent.name: file for file in (core / 'phone').glob('*/libbolewalk_core.so')}
    for package in lock()['main']:
        for file in sorted(unpacked(package).glob('jni/*/*.so')) if package.endswith(':aar') else []:
            if file.parent.name in (built or ABIS):
                yield file.parent.name, file
    yield from sorted(built.items())


def contents(dex, core):
    """What goes into the APK: name, bytes, and whether they are stored as they are."""
    with zipfile.ZipFile(OUT / 'resources.apk') as linked:
        for entry in linked.infolist():
            yield entry.filename, linked.read(entry), entry.compress_type
    with zipfile.ZipFile(dex) as shrunk:
        for entry in shrunk.infolist():
            name = entry.filename
            if not entry.is_dir() and not name.startswith(NOT_IN_AN_APK) and not name.endswith(('.kotlin_metadata', '.kotlin_module')):
                yield name, shrunk.read(entry), zipfile.ZIP_DEFLATED
    for abi, file in libraries(core):
        yield f'lib/{abi}/{file.name}', file.read_bytes(), zipfile.ZIP_STORED


def sign(raw):
    key, aligned, apk = BUILD / 'debug.keystore', OUT / 'aligned.apk', OUT / 'bolewalk.apk'
    if not key.exists():
        run('keytool', '-genkeypair', '-keystore', key, '-storepass', 'android', '-keypass', 'android', '-alias',
            'androiddebugkey', '-dname', 'CN=Android Debug', '-keyalg', 'RSA', '-keysize', '2048', '-validity', '10000')
    run('zipalign', '-f', '-p', '4', raw, aligned)
    run('apksigner', 'sign', '--ks', key, '--ks-pass', 'pass:android', '--min-sdk-version', VERSIONS['minSdk'], '--out', apk, aligned)
    run('zipalign', '-c', '-p', '4', apk)
    run('apksigner', 'verify', '--min-sdk-version', VERSIONS['minSdk'], apk)
    return apk


def classes_in(apk):
    """The classes of the APK by name, with the names of their fields and methods."""
    with zipfile.ZipFile(apk) as files:
        dex = [name for name in files.namelist() if re.fullmatch(r'classes\d*\.dex', name)]
        files.extractall(OUT / 'dex', dex)
    for name in dex:
        for block in re.split(r'\nClass #\d+ ', run('dexdump', OUT / 'dex' / name).stdout)[1:]:
            owner = re.search(r"Class descriptor  : 'L([^;]+);'", block)[1]
            yield owner, set(re.findall(r"\n      name          : '([^']+)'", block))


def look_into(apk, core):
    """JNA finds fields, callbacks and natives by their names: they must have kept them."""
    classes = dict(classes_in(apk))
    book = {name: members for name, members in classes.items() if name.startswith('bolewalk/book/')}
    kept = set().union(*book.values())
    generated = '\n'.join(file.read_text() for file in (core / 'kotlin').rglob('*.kt'))
    natives = set(re.findall(r'external fun (\w+)', generated))
    wrong = [f'{owner}.{member}' for owner, member in (
        ('com/sun/jna/Pointer', 'peer'), ('com/sun/jna/Structure', 'read'), ('com/sun/jna/Native', 'getNativeVersion'),
        ('bolewalk/app/MainActivity', 'onCreate')) if member not in classes.get(owner, ())]
    wrong += sorted(natives - kept)
    wrong += [] if any({'capacity', 'len', 'data'} <= members for members in book.values()) else ['the fields of RustBuffer']
    wrong += [] if any({'code', 'error_buf'} <= members for members in book.values()) else ['the fields of the call status']
    callbacks = [name for name, members in book.items() if 'callback' in members]
    wrong += [] if callbacks else ['the callbacks']
    if wrong or not natives:
        sys.exit('R8 took away or renamed: ' + ', '.join(wrong))
    print(f'ok: in the dex JNA and the bindings keep their names: {len(natives)} natives, {len(callbacks)} callbacks')


def build(compiled, core):
    dex = shrink.to_dex(compiled)
    if wrong := [*wrong_release(OUT / 'AndroidManifest.xml')]:
        sys.exit('\n'.join(wrong))
    raw = OUT / 'raw.apk'
    with zipfile.ZipFile(raw, 'w') as out:
        for name, data, how in contents(dex, core):
            out.writestr(name, data, how)
    apk = sign(raw)
    look_into(apk, core)
    phones = sorted(file.parent.name for file in (core / 'phone').glob('*/libbolewalk_core.so'))
    print(f'ok: APK aligned, signed and verified, {apk.stat().st_size / 1e6:.1f} MB, {apk}')
    if not phones:
        print('SKIPPED: the APK holds no core for phones; ANDROID_NDK_HOME=<an NDK\'s folder> mobile-android/phone')
