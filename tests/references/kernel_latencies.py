"""The steps of LiveLatencies in Jupyter's kernel, by Jupyter's own client: kernel_latencies.py folder-of-the-design

The kernel .net-csharp has to be installed (eightohm jupyter install). Without a page: what a browser adds is left out on both sides.
Jupyter has no sheet, and knows of no cells that hang on a target: after a move a person runs the chapter again, and those before it that feed it.
"""
import os
import shutil
import statistics
import sys
import tempfile
import time

import nbformat
from jupyter_client.manager import KernelManager

CHAPTER = '04-loads'


def say(what, *seconds):
    if len(seconds) == 1:
        print(f'{what}: {1000 * seconds[0]:.0f} ms', flush=True)
    else:
        print(f'{what}: median {1000 * statistics.median(seconds):.0f} ms, worst {1000 * max(seconds):.0f} ms of {len(seconds)}', flush=True)


def timed(do):
    start = time.perf_counter()
    do()
    return time.perf_counter() - start


folder = os.path.join(tempfile.mkdtemp(), 'design')
shutil.copytree(sys.argv[1], folder, ignore=shutil.ignore_patterns('.eightohm'))
cells = [c.source for c in nbformat.read(os.path.join(folder, CHAPTER + '.ipynb'), 4).cells if c.cell_type == 'code']

start = time.perf_counter()
manager = KernelManager(kernel_name='.net-csharp')
manager.start_kernel(cwd=folder)
client = manager.client()
client.start_channels()
client.wait_for_ready(timeout=120)


def run(source):
    reply = client.execute_interactive(source, output_hook=lambda _: None, timeout=300)
    if reply['content']['status'] != 'ok':
        sys.exit(f'{source}\n{reply["content"]}')


def chapter():
    for source in cells[1:]:
        run(source)


run(cells[0])
say('start of the kernel to a first cell, its package loaded', time.perf_counter() - start)
say('first calculation of a chapter', timed(chapter))
say('the same again', timed(chapter))
say('one cell', *(timed(lambda: run(cells[-1])) for _ in range(20)))
client.execute('System.Threading.Thread.Sleep(10_000);')
time.sleep(1)
say('completion during a cell of ten seconds', timed(lambda: client.complete('design.', 7, reply=True, timeout=60)))
client.stop_channels()
manager.shutdown_kernel(now=True)
