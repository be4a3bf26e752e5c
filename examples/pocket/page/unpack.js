// Unpacks the library: five signs are four bytes, and those are gzipped.
async function unpack(element) {
  const value = new Uint8Array(128);
  for (let c = 33, i = 0; i < 85; c++) if (!"\"&'<>\\`".includes(String.fromCharCode(c))) value[c] = i++;
  const text = element.textContent;
  const packed = new Uint8Array(text.length / 5 * 4);
  for (let i = 0, j = 0; i < text.length; i += 5, j += 4) {
    let x = 0;
    for (let k = i; k < i + 5; k++) x = x * 85 + value[text.charCodeAt(k)];
    packed[j] = x >>> 24;
    packed[j + 1] = x >>> 16;
    packed[j + 2] = x >>> 8;
    packed[j + 3] = x;
  }
  const stream = new Blob([packed.subarray(0, Number(element.dataset.size))]).stream().pipeThrough(new DecompressionStream("gzip"));
  element.remove();
  return new Response(stream).arrayBuffer();
}
