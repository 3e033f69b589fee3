// The contrast of every text of the page with what is behind it, and of every
// line of a plot, after WCAG 2.2 (1.4.3 and 1.4.11). The value is
// {texts, least, lines, leastLine, low: [texts below 4.5, lines below 3],
//  paper: luminance of the page, wide: the page is wider than the window}.
(() => {
  const colour = (text) => {
    const n = text.match(/[\d.]+/g);
    if (!text.startsWith('rgb') || !n) throw new Error('a colour that is not understood: ' + text);
    return { r: +n[0], g: +n[1], b: +n[2], a: n.length > 3 ? +n[3] : 1 };
  };
  const over = (top, below) => {
    const mix = (t, b) => t * top.a + b * (1 - top.a);
    return { r: mix(top.r, below.r), g: mix(top.g, below.g), b: mix(top.b, below.b), a: 1 };
  };
  const luminance = (c) => {
    const part = (v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
  };
  const contrast = (a, b) => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
    return (high + 0.05) / (low + 0.05);
  };
  const background = (el) => {
    const layers = [];
    for (let e = el; e; e = e.parentElement) layers.unshift(colour(getComputedStyle(e).backgroundColor));
    return layers.reduce((below, top) => over(top, below), { r: 255, g: 255, b: 255, a: 1 });
  };
  // What may lie behind a line or a text of a plot: an area, a strip, or both.
  // The labels of the axes stand outside of the frame, where neither is.
  const behind = (svg, el) => {
    const all = [background(svg)];
    if (el.matches('.label')) return all;
    for (const kind of ['.area', '.strip']) {
      const shape = svg.querySelector(kind);
      if (!shape) continue;
      const style = getComputedStyle(shape);
      const fill = { ...colour(style.fill), a: +style.fillOpacity };
      for (const below of [...all]) all.push(over(fill, below));
    }
    return all;
  };
  document.querySelectorAll('details').forEach((d) => { d.open = true; });
  const out = { texts: 0, least: 99, lines: 0, leastLine: 99, low: [], paper: luminance(background(document.body)) };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const el = node.parentElement;
    if (!node.data.trim() || ['title', 'desc', 'STYLE'].includes(el.nodeName) || !el.getClientRects().length) continue;
    const svg = el.closest('svg');
    const style = getComputedStyle(el);
    const text = colour(svg ? style.fill : style.color);
    for (const below of svg ? behind(svg, el) : [background(el)]) {
      const c = contrast(over(text, below), below);
      out.texts++;
      out.least = Math.min(out.least, c);
      if (c < 4.5) out.low.push(`${c.toFixed(2)}: ${node.data.trim().slice(0, 60)}`);
    }
  }
  for (const line of document.querySelectorAll('svg path, svg circle')) {
    if (!/^[sd]\d$/.test(line.getAttribute('class'))) continue;
    const style = getComputedStyle(line);
    const stroke = colour(line.nodeName === 'circle' ? style.fill : style.stroke);
    for (const below of behind(line.closest('svg'), line)) {
      const c = contrast(over(stroke, below), below);
      out.lines++;
      out.leastLine = Math.min(out.leastLine, c);
      if (c < 3) out.low.push(`${c.toFixed(2)}: a line of class ${line.getAttribute('class')}`);
    }
  }
  for (const el of document.querySelectorAll('svg .strip, svg .area')) { // their edges tell where they end
    const style = getComputedStyle(el);
    const below = background(el.closest('svg'));
    const c = contrast(over({ ...colour(style.stroke), a: +style.strokeOpacity }, below), below);
    out.lines++;
    out.leastLine = Math.min(out.leastLine, c);
    if (style.stroke === 'none' || c < 3) out.low.push(`${c.toFixed(2)}: the edge of a ${el.getAttribute('class')}`);
  }
  out.wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
  return out;
})()
