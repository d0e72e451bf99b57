"""Rewrites the framework's resource table so that an aapt2 of Android 10 can read it: from API 35 on, it has offsets of
16 bits and compact entries, which that aapt2 does not know."""
import struct
import zipfile

TABLE_PACKAGE, TABLE_TYPE, STAGED_ALIASES = 0x200, 0x201, 0x206
SPARSE, SHORT_OFFSETS = 1, 2
COMPLEX, COMPACT = 1, 8
NOTHING = 0xffffffff


def chunks(table, at, end):
    while at < end:
        kind, head, size = struct.unpack_from('<HHI', table, at)
        yield at, kind, head, size
        at += size


def entry(table, at):
    """One entry in the old form."""
    size, flags, data = struct.unpack_from('<HHI', table, at)
    if flags & COMPACT:  # key, flags with the value's type in the upper half, value
        return struct.pack('<HHI', 8, flags & 0xf7, size) + struct.pack('<HBBI', 8, 0, flags >> 8, data)
    if flags & COMPLEX:  # parent, count, then 12 bytes each
        count, = struct.unpack_from('<I', table, at + 12)
        return table[at:at + size + 12 * count]
    return table[at:at + size + 8]


def entries(table, at, head):
    flags = table[at + 9]
    count, start = struct.unpack_from('<II', table, at + 12)
    for index in range(count):
        if flags & SPARSE:
            key, offset = struct.unpack_from('<HH', table, at + head + 4 * index)
            offset *= 4
        elif flags & SHORT_OFFSETS:
            offset, = struct.unpack_from('<H', table, at + head + 2 * index)
            key, offset = index, NOTHING if offset == 0xffff else offset * 4
        else:
            offset, = struct.unpack_from('<I', table, at + head + 4 * index)
            key = index
        yield key, None if offset == NOTHING else entry(table, at + start + offset)


def old_type(table, at, head):
    """A chunk of one type's entries with offsets of 32 bits."""
    sparse = table[at + 9] & SPARSE
    index, data, count = bytearray(), bytearray(), 0
    for key, one in entries(table, at, head):
        count += 1
        if sparse:
            index += struct.pack('<HH', key, len(data) // 4)
        else:
            index += struct.pack('<I', NOTHING if one is None else len(data))
        data += one or b''
    start = bytearray(table[at:at + head])
    start[9] = sparse
    struct.pack_into('<I', start, 4, head + len(index) + len(data))
    struct.pack_into('<II', start, 12, count, head + len(index))
    return bytes(start + index + data)


def old_table(table):
    _, head, _ = struct.unpack_from('<HHI', table, 0)
    out, packages = bytearray(table[:head]), 0
    for at, kind, own_head, size in chunks(table, head, len(table)):
        if kind != TABLE_PACKAGE:
            out += table[at:at + size]
        elif struct.unpack_from('<I', table, at + 8)[0] == 1:  # the framework itself, not an overlay
            package = bytearray(table[at:at + own_head])
            for inner, inner_kind, inner_head, inner_size in chunks(table, at + own_head, at + size):
                if inner_kind == TABLE_TYPE:
                    package += old_type(table, inner, inner_head)
                elif inner_kind != STAGED_ALIASES:
                    package += table[inner:inner + inner_size]
            struct.pack_into('<I', package, 4, len(package))
            out += package
            packages += 1
    struct.pack_into('<II', out, 4, len(out), packages)
    return bytes(out)


def convert(framework_jar, out):
    with zipfile.ZipFile(framework_jar) as jar, zipfile.ZipFile(out, 'w') as apk:
        apk.writestr('AndroidManifest.xml', jar.read('AndroidManifest.xml'))
        apk.writestr('resources.arsc', old_table(jar.read('resources.arsc')))
