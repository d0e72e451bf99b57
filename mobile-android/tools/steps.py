"""Steps that are left out while their inputs are as they were."""
import hashlib
import pathlib
import time

from packages import BUILD

LARGE = 3_000_000


def digest(inputs, extra=''):
    """Of files and folders: their names and contents; of large files the time they were written."""
    found = hashlib.sha256(extra.encode())
    for given in map(pathlib.Path, inputs):
        for file in sorted(given.rglob('*')) if given.is_dir() else [given]:
            if file.is_file():
                found.update(str(file).encode())
                status = file.stat()
                found.update(file.read_bytes() if status.st_size < LARGE else str(status.st_mtime_ns).encode())
    return found.hexdigest()


def step(name, inputs, make, extra=''):
    """Calls make() unless it did so before on the same inputs."""
    stamp, now = BUILD / 'stamps' / name.replace(' ', '-'), digest(inputs, extra)
    if stamp.exists() and stamp.read_text() == now:
        return
    began = time.time()
    make()
    stamp.parent.mkdir(parents=True, exist_ok=True)
    stamp.write_text(now)
    print(f'{name}: {time.time() - began:.1f} s', flush=True)
