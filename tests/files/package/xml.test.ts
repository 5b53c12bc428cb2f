import {
  childElements,
  childrenOf,
  escaped,
  rootElement,
  textIn,
} from "../../../src/files/package/xml";

const XML = `<?xml version="1.0"?><!-- <a> --><x:root q='a>b' n="1 &amp; 2"><x:a/>text<b c="/"><a>1</a></b><![CDATA[<no>]]><a>&lt;&#65;&#x42;</a></x:root>`;

test("elements are found with prefix, attributes and place, whatever stands in quotes and comments", () => {
  const root = rootElement(XML)!;
  expect(root).toMatchObject({ name: "root", prefix: "x", attributes: { q: "a>b", n: "1 & 2" } });
  expect(XML.slice(root.start, root.end)).toBe(XML.slice(XML.indexOf("<x:root")));
  const children = childrenOf(XML, root);
  expect(children.map(({ name }) => name)).toEqual(["a", "b", "a"]);
  expect(children.map((each) => XML.slice(each.start, each.end))).toEqual([
    "<x:a/>",
    `<b c="/"><a>1</a></b>`,
    "<a>&lt;&#65;&#x42;</a>",
  ]);
  expect(textIn(XML, children[2]!)).toBe("<AB");
});

test("what stands behind a stretch is its own list, up to the end of what holds it", () => {
  const tail = "<a/><b><a/></b></sheet><after/>";
  expect(childElements(tail).map(({ name }) => name)).toEqual(["a", "b"]);
});

test("a text is written so that it reads the same, without characters that XML does not know", () => {
  const text = 'a<b>&"c"\n\u0001é';
  expect(textIn(`<t>${escaped(text)}</t>`, rootElement(`<t>${escaped(text)}</t>`)!)).toBe(
    'a<b>&"c"\né',
  );
});
