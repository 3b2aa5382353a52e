"""Every kind of link that OpenDocument can hold, each as the piece of XML that makes it.

A kind has a place in the document and a text in which {address} stands for what it links to. `calls` says whether a
reader is meant to fetch it by itself; a hyperlink, which waits for a click, is in the table too."""

import base64
import gzip
from dataclasses import dataclass


@dataclass(frozen=True)
class Kind:
    name: str
    place: str
    text: str
    ending: str = "png"


HREF_SPACE = "http://www.w3.org/1999/xlink"
NAMESPACES = " ".join(
    f'xmlns:{prefix}="{name}"'
    for prefix, name in {
        **{
            short: f"urn:oasis:names:tc:opendocument:xmlns:{long}:1.0"
            for short, long in {
                "office": "office", "style": "style", "text": "text", "table": "table", "draw": "drawing",
                "fo": "xsl-fo-compatible", "meta": "meta", "svg": "svg-compatible", "chart": "chart", "form": "form",
                "script": "script", "presentation": "presentation", "dr3d": "dr3d", "number": "datastyle",
                "manifest": "manifest",
            }.items()
        },
        "xlink": HREF_SPACE,
        "xforms": "http://www.w3.org/2002/xforms",
        "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
        "ooo": "http://openoffice.org/2004/office",
        "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
    }.items()
)

HREF = 'xlink:href="{address}" xlink:type="simple" xlink:show="embed" xlink:actuate="onLoad"'
FRAME = '<draw:frame svg:width="2cm" svg:height="2cm" svg:x="1cm" svg:y="1cm">%s</draw:frame>'


def cell(formula, value='office:value-type="float" office:value="7"'):
    return f'<table:table-row><table:table-cell table:formula="of:={formula}" {value}/></table:table-row>'


TEXT = 'office:value-type="string" office:string-value="as saved"'

KINDS = [
    Kind("picture", "shapes", FRAME % f"<draw:image {HREF}/>"),
    Kind("picture in a cell", "cells", "<table:table-row><table:table-cell>"
         + FRAME % f"<draw:image {HREF}/>" + "</table:table-cell></table:table-row>"),
    Kind("drawing as picture", "shapes", FRAME % f"<draw:image {HREF}/>", "svg"),
    Kind("drawing in letters", "shapes", FRAME % "<draw:image><office:binary-data>{drawing}</office:binary-data></draw:image>"),
    Kind("packed drawing in letters", "shapes",
         FRAME % "<draw:image><office:binary-data>{packed}</office:binary-data></draw:image>"),
    Kind("object", "shapes", FRAME % f"<draw:object {HREF}/>", "ods"),
    Kind("foreign object", "shapes", FRAME % f"<draw:object-ole {HREF}/>", "bin"),
    Kind("preview of an object", "shapes", FRAME % f'<draw:object/><draw:image {HREF}/>'),
    Kind("plugin", "shapes", FRAME % f'<draw:plugin {HREF} draw:mime-type="application/vnd.sun.star.media"/>', "mp4"),
    Kind("applet", "shapes", FRAME % f'<draw:applet {HREF} draw:code="A.class"/>', "jar"),
    Kind("floating frame", "shapes", FRAME % f"<draw:floating-frame {HREF}/>", "html"),
    Kind("shape with a hyperlink", "shapes",
         '<draw:a xlink:type="simple" xlink:href="{address}">' + FRAME % "<draw:text-box/>" + "</draw:a>", "html"),
    Kind("image map", "shapes", FRAME % ('<draw:text-box/><draw:image-map><draw:area-rectangle '
         'xlink:href="{address}" xlink:type="simple" svg:x="0cm" svg:y="0cm" svg:width="1cm" svg:height="1cm"/>'
         "</draw:image-map>"), "html"),
    Kind("shape with a sound", "shapes",
         '<draw:rect svg:width="1cm" svg:height="1cm"><office:event-listeners><presentation:event-listener '
         f'script:event-name="dom:click" presentation:action="sound"><presentation:sound {HREF}/>'
         "</presentation:event-listener></office:event-listeners></draw:rect>", "wav"),
    Kind("fill picture", "styles", f'<draw:fill-image draw:name="F{{number}}" {HREF}/><style:style '
         'style:name="G{number}" style:family="graphic"><style:graphic-properties draw:fill="bitmap" '
         'draw:fill-image-name="F{number}"/></style:style>'),
    Kind("fill picture of a shape", "automatic",
         '<style:style style:name="H{number}" style:family="graphic"><style:graphic-properties draw:fill="bitmap" '
         f'draw:fill-image-name="none"><style:background-image {HREF}/></style:graphic-properties></style:style>'),
    Kind("picture behind cells", "automatic", '<style:style style:name="C{number}" style:family="table-cell">'
         f"<style:table-cell-properties><style:background-image {HREF}/></style:table-cell-properties></style:style>"),
    Kind("picture behind a sheet", "automatic", '<style:style style:name="T{number}" style:family="table">'
         f"<style:table-properties><style:background-image {HREF}/></style:table-properties></style:style>"),
    Kind("picture behind a page", "automatic", '<style:page-layout style:name="P{number}">'
         f"<style:page-layout-properties><style:background-image {HREF}/></style:page-layout-properties>"
         f"<style:header-style><style:header-footer-properties><style:background-image {HREF}/>"
         "</style:header-footer-properties></style:header-style></style:page-layout>"),
    Kind("picture as bullet", "styles", '<text:list-style style:name="L{number}"><text:list-level-style-image '
         f'text:level="1" {HREF}/></text:list-style>'),
    Kind("picture in a paragraph style", "styles", '<style:style style:name="Y{number}" style:family="paragraph">'
         f"<style:paragraph-properties><style:background-image {HREF}/></style:paragraph-properties></style:style>"),
    Kind("symbol of a chart", "styles", '<style:style style:name="S{number}" style:family="chart">'
         f"<style:chart-properties><chart:symbol-image {HREF}/></style:chart-properties></style:style>"),
    Kind("font", "fonts", '<style:font-face style:name="Face{number}" svg:font-family="Face{number}">'
         '<svg:font-face-src><svg:font-face-uri xlink:href="{address}" xlink:type="simple"><svg:font-face-format '
         'svg:string="truetype"/></svg:font-face-uri></svg:font-face-src></style:font-face>', "ttf"),
    Kind("linked sheet", "sheets", '<table:table table:name="Linked{number}"><table:table-source xlink:type="simple" '
         'xlink:href="{address}" table:table-name="Data" table:mode="copy-results-only" table:refresh-delay="PT1S"/>'
         '<table:table-row><table:table-cell office:value-type="float" office:value="7"/></table:table-row>'
         "</table:table>", "ods"),
    Kind("linked range", "cells", '<table:table-row><table:table-cell office:value-type="float" office:value="7">'
         '<table:cell-range-source table:name="A1:B2" xlink:type="simple" xlink:href="{address}" '
         'table:last-column-spanned="1" table:last-row-spanned="1" table:refresh-delay="PT1S"/></table:table-cell>'
         "</table:table-row>", "ods"),
    Kind("reference to a file", "cells", cell("['{address}'#$Data.A1]*2"), "ods"),
    Kind("sum over a file", "cells", cell("SUM(['{address}'#$Data.A1:.B9])"), "ods"),
    Kind("lookup in a file", "cells", cell("VLOOKUP(1;['{address}'#$Data.A1:.B9];2)"), "ods"),
    Kind("matrix over a file", "cells", '<table:table-row><table:table-cell table:number-matrix-columns-spanned="1" '
         'table:number-matrix-rows-spanned="1" table:formula="of:=SUM([\'{address}\'#$Data.A1:.A9]*2)" '
         'office:value-type="float" office:value="7"/></table:table-row>', "ods"),
    Kind("name in a file", "cells", cell("'{address}'#thename"), "ods"),
    Kind("computed reference", "cells", cell("INDIRECT(&quot;'{address}'#$Data.A&quot;&amp;1)"), "ods"),
    Kind("computed reference in R1C1", "cells", cell("INDIRECT(&quot;'{address}'#$Data.R1C&quot;&amp;1;0)"), "ods"),
    Kind("asks a server", "cells", cell("COM.MICROSOFT.WEBSERVICE(&quot;{address}&quot;)", TEXT), "xml"),
    Kind("asks a server, computed", "cells", cell("COM.MICROSOFT.WEBSERVICE(&quot;{address}&quot;&amp;&quot;&quot;)", TEXT), "xml"),
    Kind("reads XML of a server", "cells",
         cell("COM.MICROSOFT.FILTERXML(COM.MICROSOFT.WEBSERVICE(&quot;{address}&quot;);&quot;/a&quot;)", TEXT), "xml"),
    Kind("hyperlink as formula", "cells", cell("HYPERLINK(&quot;{address}&quot;;&quot;more&quot;)", TEXT), "html"),
    Kind("hyperlink", "cells", '<table:table-row><table:table-cell office:value-type="string"><text:p><text:a '
         'xlink:type="simple" xlink:href="{address}">more</text:a></text:p></table:table-cell></table:table-row>',
         "html"),
    Kind("data exchange as formula", "cells",
         cell("DDE(&quot;soffice&quot;;&quot;{address}&quot;;&quot;Data.A1&quot;)"), "ods"),
    Kind("data exchange", "links", '<table:dde-link><office:dde-source office:dde-application="soffice" '
         'office:dde-topic="{address}" office:dde-item="Data.A1" office:automatic-update="true"/><table:table>'
         '<table:table-row><table:table-cell office:value-type="float" office:value="7"/></table:table-row>'
         "</table:table></table:dde-link>", "ods"),
    Kind("name that stands for a file", "names",
         '<table:named-expression table:name="far{number}" table:base-cell-address="$Data.$A$1" '
         "table:expression=\"['{address}'#$Data.$A$1]\"/>", "ods"),
    Kind("rule for input", "validations", '<table:content-validation table:name="v{number}" '
         "table:condition=\"of:cell-content-is-in-list(['{address}'#$Data.A1:.A9])\" "
         'table:base-cell-address="Data.A1"/>', "ods"),
    Kind("conditional format", "formats", '<calcext:conditional-format calcext:target-range-address="Data.A1:Data.A2">'
         "<calcext:condition calcext:apply-style-name=\"Default\" calcext:value=\"formula-is(['{address}'#$Data.A1])\" "
         'calcext:base-cell-address="Data.A1"/></calcext:conditional-format>', "ods"),
    Kind("database range", "ranges", '<table:database-range table:name="d{number}" '
         'table:target-range-address="Data.H1:Data.I3"><table:database-source-table table:database-name="{address}" '
         'table:database-table-name="t"/></table:database-range>', "odb"),
    Kind("database range by a query", "ranges", '<table:database-range table:name="q{number}" '
         'table:refresh-delay="PT1S" table:target-range-address="Data.K1:Data.L3"><table:database-source-sql '
         'table:database-name="{address}" table:sql-statement="SELECT 1"/></table:database-range>', "odb"),
    Kind("pivot table of a database", "pivots", '<table:data-pilot-table table:name="p{number}" '
         'table:target-range-address="Data.N1:Data.O3"><table:database-source-table table:database-name="{address}" '
         'table:database-table-name="t"/></table:data-pilot-table>', "odb"),
    Kind("pivot table of a service", "pivots", '<table:data-pilot-table table:name="s{number}" '
         'table:target-range-address="Data.Q1:Data.R3"><table:source-service table:name="none" '
         'table:source-name="{address}" table:object-name="t"/></table:data-pilot-table>', "odb"),
    Kind("data mapping", "mappings", '<calcext:data-mapping xlink:href="{address}" xlink:type="simple" '
         'calcext:provider="org.libreoffice.calc.csv" calcext:id="" calcext:database-name="m{number}"/>', "csv"),
    Kind("consolidation", "ends", '<table:consolidation table:function="sum" '
         "table:source-cell-range-addresses=\"'{address}'#Data.A1:.A9\" "
         'table:target-cell-address="Data.T1"/>', "ods"),
    Kind("form of a database", "forms", '<form:form form:name="f{number}" form:datasource="{address}" '
         'form:command="t" form:command-type="table" form:apply-filter="true"/>', "odb"),
    Kind("form of a connection", "forms", '<form:form form:name="c{number}" form:command="t"><form:connection-resource '
         'xlink:href="{address}"/></form:form>', "odb"),
    Kind("form to be sent", "forms", '<form:form form:name="s{number}" xlink:type="simple" xlink:href="{address}" '
         'xlink:actuate="onRequest"/>', "html"),
    Kind("picture of a control", "forms", '<form:form form:name="i{number}"><form:image form:id="i{number}" '
         'xml:id="i{number}" form:image-data="{address}"/><form:button form:id="b{number}" xml:id="b{number}" '
         'form:image-data="{address}" xlink:href="{address}"/></form:form>'),
    Kind("data of a model", "forms", '<xforms:model id="m{number}" schema="{address}"><xforms:instance id="x{number}" '
         'src="{address}"/></xforms:model>', "xml"),
    Kind("macro of an event", "scripts", '<office:event-listeners><script:event-listener script:language="ooo:script" '
         'script:event-name="dom:load" xlink:href="{address}" xlink:type="simple"/></office:event-listeners>', "py"),
    Kind("template", "meta", '<meta:template xlink:type="simple" xlink:actuate="onRequest" xlink:href="{address}" '
         'meta:date="2001-01-01T00:00:00"/>', "ots"),
    Kind("reload from elsewhere", "meta", '<meta:auto-reload xlink:type="simple" xlink:href="{address}" '
         'meta:delay="PT1S"/>', "ods"),
    Kind("document type", "doctype", '<!DOCTYPE {root} SYSTEM "{address}">', "dtd"),
    Kind("style sheet", "instructions", '<?xml-stylesheet type="text/xsl" href="{address}"?>', "xsl"),
    Kind("outside text", "entity", "{address}", "txt"),
]


def drawing(address):
    return (f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="{HREF_SPACE}" width="40" height="40">'
            f'<image xlink:href="{address}" width="40" height="40"/></svg>').encode()


def letters(bytes_):
    return base64.b64encode(bytes_).decode()


def parts(kinds, address):
    """The pieces by place. address: a function of kind and number."""
    places = {}
    for number, kind in enumerate(kinds):
        picture = drawing(address(kind))
        text = kind.text.replace("{address}", address(kind)).replace("{number}", str(number))
        text = text.replace("{drawing}", letters(picture)).replace("{packed}", letters(gzip.compress(picture)))
        places.setdefault(kind.place, []).append(text)
    return {place: "".join(texts) for place, texts in places.items()}


FIRST_CELLS = (
    '<table:table-row><table:table-cell table:formula="of:=HEARTHCELL.STOVE.BOILINGPOINT(1500)" '
    'office:value-type="float" office:value="95"/></table:table-row>'
    '<table:table-row><table:table-cell office:value-type="float" office:value="7"/></table:table-row>'
)


def opening(pieces, root):
    text = '<?xml version="1.0" encoding="UTF-8"?>' + pieces.get("instructions", "")
    if "entity" in pieces:
        text += f'<!DOCTYPE {root} [<!ENTITY far SYSTEM "{pieces["entity"]}">]>'
    else:
        text += pieces.get("doctype", "").replace("{root}", root)
    return text


def fonts(pieces):
    return f'<office:font-face-decls>{pieces.get("fonts", "")}</office:font-face-decls>'


def styles(pieces):
    return (
        '<office:styles><style:style style:name="Default" style:family="table-cell"/>'
        f'{pieces.get("styles", "")}</office:styles>'
    )


def pages():
    return '<office:master-styles><style:master-page style:name="Default" style:page-layout-name="pm"/></office:master-styles>'


def body(pieces):
    text = "&far;" if "entity" in pieces else ""
    sheet = (
        '<table:table table:name="Data">'
        f'<office:forms>{pieces.get("forms", "")}</office:forms>'
        f'<table:shapes>{pieces.get("shapes", "")}</table:shapes>'
        + FIRST_CELLS
        + f'<table:table-row><table:table-cell office:value-type="string"><text:p>plain {text}</text:p>'
        + f'</table:table-cell></table:table-row>{pieces.get("cells", "")}'
        + f'<calcext:conditional-formats>{pieces.get("formats", "")}</calcext:conditional-formats></table:table>'
    )
    return (
        "<office:body><office:spreadsheet>"
        f'<table:content-validations>{pieces.get("validations", "")}</table:content-validations>'
        + sheet
        + pieces.get("sheets", "")
        + f'<table:named-expressions>{pieces.get("names", "")}</table:named-expressions>'
        + f'<table:database-ranges>{pieces.get("ranges", "")}</table:database-ranges>'
        + f'<table:data-pilot-tables>{pieces.get("pivots", "")}</table:data-pilot-tables>'
        + pieces.get("ends", "")
        + f'<table:dde-links>{pieces.get("links", "")}</table:dde-links>'
        + (f'<calcext:data-mappings>{pieces["mappings"]}</calcext:data-mappings>' if "mappings" in pieces else "")
        + "</office:spreadsheet></office:body>"
    )


MIME = "application/vnd.oasis.opendocument.spreadsheet"


def flat(kinds, address):
    pieces = parts(kinds, address)
    return (
        opening(pieces, "office:document")
        + f'<office:document {NAMESPACES} office:version="1.3" office:mimetype="{MIME}">'
        + f'<office:meta>{pieces.get("meta", "")}</office:meta>'
        + f'<office:scripts>{pieces.get("scripts", "")}</office:scripts>'
        + fonts(pieces)
        + styles(pieces)
        + f'<office:automatic-styles>{pieces.get("automatic", "")}</office:automatic-styles>'
        + pages()
        + body(pieces)
        + "</office:document>"
    )


SVG = (
    '<?xml version="1.0"?><?xml-stylesheet type="text/css" href="{address}.css"?>'
    '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="40" height="40">'
    '<style>@import url("{address}.css"); rect {{ fill: url("{address}.svg#g") }}</style>'
    '<image xlink:href="{address}" href="{address}" width="20" height="20"/><use xlink:href="{address}.svg#a"/>'
    '<rect width="20" height="20" fill="url({address}.svg#g)"/></svg>'
)


def package(kinds, address, inside):
    """The entries of an .ods. inside: the address of what pictures and objects in the package link to."""
    pieces = parts(kinds, address)
    entries = {"mimetype": MIME}
    embedded = FRAME % '<draw:image xlink:href="Pictures/drawing.svg" xlink:type="simple"/>' + FRAME % (
        '<draw:object xlink:href="./Object 1" xlink:type="simple"/>')
    pieces["shapes"] = pieces.get("shapes", "") + embedded
    entries["content.xml"] = (
        opening(pieces, "office:document-content")
        + f'<office:document-content {NAMESPACES} office:version="1.3">'
        + f'<office:scripts>{pieces.get("scripts", "")}</office:scripts>'
        + fonts(pieces)
        + f'<office:automatic-styles>{pieces.get("automatic", "")}</office:automatic-styles>'
        + body(pieces)
        + "</office:document-content>"
    )
    entries["styles.xml"] = (
        opening({}, "")
        + f'<office:document-styles {NAMESPACES} office:version="1.3">'
        + fonts(pieces)
        + styles(pieces)
        + f'<office:automatic-styles>{pieces.get("automatic", "")}</office:automatic-styles>'
        + pages()
        + "</office:document-styles>"
    )
    entries["meta.xml"] = (
        opening({}, "")
        + f'<office:document-meta {NAMESPACES} office:version="1.3"><office:meta>{pieces.get("meta", "")}</office:meta>'
        + "</office:document-meta>"
    )
    entries["Pictures/drawing.svg"] = SVG.format(address=inside)
    fill = f'<draw:fill-image draw:name="wall" xlink:href="{inside}" xlink:type="simple"/>'
    entries["Object 1/styles.xml"] = (
        opening({}, "") + f'<office:document-styles {NAMESPACES} office:version="1.3"><office:styles>{fill}'
        "</office:styles></office:document-styles>"
    )
    entries["Object 1/content.xml"] = (
        opening({}, "")
        + f'<office:document-content {NAMESPACES} office:version="1.3"><office:automatic-styles>'
        + '<style:style style:name="ch1" style:family="chart"><style:graphic-properties draw:fill="bitmap" '
        + 'draw:fill-image-name="wall"/></style:style></office:automatic-styles><office:body><office:chart>'
        + '<chart:chart svg:width="8cm" svg:height="6cm" xlink:href=".." xlink:type="simple" chart:class="chart:bar" '
        + 'chart:style-name="ch1"><chart:plot-area chart:style-name="ch1"><chart:series '
        + f"chart:values-cell-range-address=\"'{inside}'#$Data.A1:.A3\" chart:class=\"chart:bar\"/></chart:plot-area>"
        + "</chart:chart></office:chart></office:body></office:document-content>"
    )
    types = {
        "/": MIME, "content.xml": "text/xml", "styles.xml": "text/xml", "meta.xml": "text/xml",
        "Pictures/drawing.svg": "image/svg+xml", "Object 1/": "application/vnd.oasis.opendocument.chart",
        "Object 1/content.xml": "text/xml", "Object 1/styles.xml": "text/xml",
    }
    entries["META-INF/manifest.xml"] = (
        '<?xml version="1.0" encoding="UTF-8"?><manifest:manifest '
        'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">'
        + "".join(
            f'<manifest:file-entry manifest:full-path="{path}" manifest:media-type="{kind}"/>'
            for path, kind in types.items()
        )
        + "</manifest:manifest>"
    )
    return entries
