"""The first chart of a fresh notebook, by Jupyter's own client and without a page: first_chart.py [seconds to wait before the first cell]

The kernel .net-csharp (eightohm jupyter install) and Python with numpy and matplotlib, five times in turn.
Seconds by the clock and of the processor, medians; the processor time of all is the kernel's, its children's and the client's. Linux alone.
"""
import os
import resource
import statistics
import sys
import tempfile
import time

from jupyter_client.manager import KernelManager

WAIT = float(sys.argv[1]) if len(sys.argv) > 1 else 0
CSHARP = ['#r "nuget: EightOhm.Notebook, 0.1.0"', '''
var f = Enumerable.Range(1, 40).Select(i => i * 1e3).ToArray();
Figure.Line("Slew rate of 40 V peak", new Axis("frequency", "Hz"), new Axis("slew rate", "V/µs"),
    new LineSeries("needed", f, f.Select(x => SlewRate.Needed(x.Hz, 40.V).VoltsPerSeconds / 1e6)))''']
PYTHON = ['import numpy as np\nimport matplotlib.pyplot as plt', '''
f = np.arange(1, 41) * 1e3
plt.plot(f, 2 * np.pi * f * 40 / 1e6, label="needed")
plt.title("Slew rate of 40 V peak"); plt.xlabel("frequency [Hz]"); plt.ylabel("slew rate [V/µs]"); plt.legend(); plt.show()''']


def own():
    used = resource.getrusage(resource.RUSAGE_SELF)
    return used.ru_utime + used.ru_stime


def used(pid):
    with open(f'/proc/{pid}/stat') as stat:
        return sum(int(ticks) for ticks in stat.read().rsplit(')', 1)[1].split()[11:15]) / os.sysconf('SC_CLK_TCK')


def once(name, cells):
    start, client_before = time.perf_counter(), own()
    manager = KernelManager(kernel_name=name)
    nothing = open(os.devnull, 'w')
    manager.start_kernel(cwd=tempfile.mkdtemp(), stdout=nothing, stderr=nothing)
    client = manager.client()
    client.start_channels()
    client.wait_for_ready(timeout=120)
    pid = manager.provisioner.process.pid
    steps = [(time.perf_counter() - start, used(pid))]
    time.sleep(WAIT)
    for cell in cells:
        begun = time.perf_counter()
        reply = client.execute_interactive(cell, output_hook=lambda _: None, timeout=300)
        if reply['content']['status'] != 'ok':
            sys.exit(f'{cell}\n{reply["content"]}')
        steps.append((time.perf_counter() - begun, used(pid)))
    client.stop_channels()
    manager.shutdown_kernel(now=True)
    clock = [s[0] for s in steps]
    processor = [b[1] - a[1] for a, b in zip([(0, 0)] + steps, steps)]
    return [*clock, sum(clock), *processor, sum(processor) + own() - client_before]


kinds = [('.net-csharp', CSHARP), ('python3', PYTHON)]
# The first finds its packages, which no later one has to.
once(*kinds[0])
taken = {name: [] for name, _ in kinds}
for _ in range(5):
    for name, cells in kinds:
        taken[name].append(once(name, cells))
for name, rows in taken.items():
    print(f'{name:12s} clock: ready {{:.2f}}, package or imports {{:.2f}}, chart {{:.2f}}, all {{:.2f}}; processor: {{:.2f}}, {{:.2f}}, {{:.2f}}, all {{:.2f}}'
          .format(*(statistics.median(column) for column in zip(*rows))), flush=True)
# What the client's sockets say at its end is nobody's concern.
os._exit(0)
