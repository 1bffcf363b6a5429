"""Runs notebooks in one kernel, one after the other, by Jupyter's own client: run-notebooks.py folder-for-the-results notebook...

The kernel's start and the finding of its packages cost more than a notebook's cells, so that notebooks of one folder share a kernel;
for all but the first the package is there already, and its line is left out. Each result is written under the notebook's own name.
"""
import os
import random
import re
import sys
import time

import nbformat
from jupyter_client.manager import KernelManager
from nbclient import NotebookClient
from nbclient.exceptions import DeadKernelError

ATTEMPTS = 5


class Kernel:
    def __init__(self, folder):
        self.manager = KernelManager(kernel_name='.net-csharp')
        self.manager.start_kernel(cwd=folder)
        self.channels = None

    def run(self, path):
        notebook = nbformat.read(path, 4)
        client = NotebookClient(notebook, km=self.manager, timeout=240, allow_errors=True)
        if self.channels is None:
            client.start_new_kernel_client()
            self.channels = client.kc
        else:
            client.kc = self.channels
            for cell in notebook.cells:
                if cell.cell_type == 'code':
                    cell.source = re.sub(r'^#r "nuget:.*$', ';', cell.source, flags=re.M)
        client.reset_execution_trackers()
        for at, cell in enumerate(notebook.cells):
            client.execute_cell(cell, at, store_history=True)
        return notebook

    def end(self):
        if self.channels is not None:
            self.channels.stop_channels()
        self.manager.shutdown_kernel(now=True)


def begin(path):
    """A kernel that has run its first notebook, and what that gave. The host ends early when another takes the port that it found free a moment before: it is started again."""
    for attempt in range(ATTEMPTS):
        kernel = Kernel(os.path.dirname(path))
        try:
            return kernel, kernel.run(path)
        except (DeadKernelError, RuntimeError):
            kernel.end()
            if attempt == ATTEMPTS - 1:
                raise
            time.sleep(random.uniform(0, 3))


results, notebooks = sys.argv[1], sys.argv[2:]
kernel, ran = begin(notebooks[0])
try:
    for number, path in enumerate(notebooks):
        if number > 0:
            ran = kernel.run(path)
        nbformat.write(ran, os.path.join(results, os.path.basename(path)))
finally:
    kernel.end()
