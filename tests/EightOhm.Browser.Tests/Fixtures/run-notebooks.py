"""Runs notebooks in one kernel, one after the other, by Jupyter's own client: run-notebooks.py folder-for-the-results notebook...

The kernel's start and the finding of its packages cost more than a notebook's cells, so that a few notebooks of one folder share a kernel;
for all but the first the package is there already, and its line is left out. Each result is written under the notebook's own name.
"""
import os
import re
import sys

import nbformat
from jupyter_client.manager import KernelManager
from nbclient import NotebookClient

results, notebooks = sys.argv[1], sys.argv[2:]
folder = os.path.dirname(notebooks[0])
manager = KernelManager(kernel_name='.net-csharp')
manager.start_kernel(cwd=folder)
channels = None
try:
    for path in notebooks:
        notebook = nbformat.read(path, 4)
        client = NotebookClient(notebook, km=manager, timeout=240, allow_errors=True)
        if channels is None:
            client.start_new_kernel_client()
            channels = client.kc
        else:
            client.kc = channels
            for cell in notebook.cells:
                if cell.cell_type == 'code':
                    cell.source = re.sub(r'^#r "nuget:.*$', ';', cell.source, flags=re.M)
        client.reset_execution_trackers()
        for at, cell in enumerate(notebook.cells):
            client.execute_cell(cell, at, store_history=True)
        nbformat.write(notebook, os.path.join(results, os.path.basename(path)))
finally:
    if channels is not None:
        channels.stop_channels()
    manager.shutdown_kernel(now=True)
