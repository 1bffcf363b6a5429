// JupyterLab's own output renderer for a plain page: an output is put in as JupyterLab's output area does, rendered first and attached at once.
import { MimeModel, RenderMimeRegistry, standardRendererFactories } from '@jupyterlab/rendermime';
import { Widget } from '@lumino/widgets';

const registry = new RenderMimeRegistry({ initialFactories: standardRendererFactories });

window.renderOutput = async (host, data, trusted) => {
  const widget = registry.createRenderer(registry.preferredMimeType(data, trusted ? 'any' : 'ensure'));
  const done = widget.renderModel(new MimeModel({ data, trusted }));
  Widget.attach(widget, host);
  await done;
};
