"""Every kind of link that an .xlsx can hold. A kind is a relation of a part, or a piece of XML in one, or both."""

from dataclasses import dataclass

REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
DRAWING = "http://schemas.openxmlformats.org/drawingml/2006"
PACKAGE = "http://schemas.openxmlformats.org/package/2006"


@dataclass(frozen=True)
class Kind:
    """`part` holds the relation of that type, and `place` in it the text, in which {id} is the relation's."""

    name: str
    part: str = ""
    relation: str = ""
    place: str = ""
    text: str = ""
    ending: str = "png"


def anchored(text):
    return (
        "<xdr:twoCellAnchor><xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row>"
        "<xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>3</xdr:col><xdr:colOff>0</xdr:colOff>"
        f"<xdr:row>6</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>{text}<xdr:clientData/></xdr:twoCellAnchor>"
    )


def picture(blip, properties="", more=""):
    return anchored(
        f'<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="{{number}}" name="P{{number}}">{properties}</xdr:cNvPr><xdr:cNvPicPr/>'
        f"<xdr:nvPr>{more}</xdr:nvPr></xdr:nvPicPr><xdr:blipFill>{blip}<a:stretch><a:fillRect/></a:stretch>"
        "</xdr:blipFill><xdr:spPr/></xdr:pic>"
    )


def shape(properties, fill):
    return anchored(
        f'<xdr:sp><xdr:nvSpPr><xdr:cNvPr id="{{number}}" name="S{{number}}">{properties}</xdr:cNvPr><xdr:cNvSpPr/>'
        "</xdr:nvSpPr><xdr:spPr><a:xfrm><a:off x='0' y='0'/><a:ext cx='99999' cy='99999'/></a:xfrm><a:prstGeom "
        f'prst="rect"><a:avLst/></a:prstGeom>{fill}</xdr:spPr></xdr:sp>'
    )


def cell(formula, kind=""):
    return f'<c{kind}><f>{formula}</f><v>7</v></c>'


SHEET, BOOK, PICTURES, LEGACY, CHART = (
    "xl/worksheets/sheet1.xml", "xl/workbook.xml", "xl/drawings/drawing1.xml", "xl/drawings/vml1.vml",
    "xl/charts/chart1.xml",
)

KINDS = [
    Kind("picture", PICTURES, "image", "drawing", picture('<a:blip r:link="{id}"/>')),
    Kind("picture that says it is inside", PICTURES, "image", "drawing", picture('<a:blip r:embed="{id}"/>')),
    Kind("drawing as picture", PICTURES, "image", "drawing", picture(
        '<a:blip><a:extLst><a:ext uri="{{96DAC541-7B7A-43D3-8B79-37D633B846F1}}"><asvg:svgBlip xmlns:asvg='
        '"http://schemas.microsoft.com/office/drawing/2016/SVG/main" r:link="{id}"/></a:ext></a:extLst></a:blip>'), "svg"),
    Kind("fill picture", PICTURES, "image", "drawing",
         shape("", '<a:blipFill><a:blip r:link="{id}"/><a:stretch/></a:blipFill>')),
    Kind("shape with a hyperlink", PICTURES, "hyperlink", "drawing", shape('<a:hlinkClick r:id="{id}"/>', ""), "html"),
    Kind("shape with a sound", PICTURES, "audio", "drawing", shape(
        '<a:hlinkClick r:id=""><a:snd r:embed="{id}" name="s"/></a:hlinkClick>', ""), "wav"),
    Kind("film", PICTURES, "video", "drawing", picture('<a:blip/>', "", '<a:videoFile r:link="{id}"/>'), "mp4"),
    Kind("sound", PICTURES, "audio", "drawing", picture('<a:blip/>', "", '<a:audioFile r:link="{id}"/>'), "wav"),
    Kind("media", PICTURES, "media", "drawing", picture('<a:blip/>', "", (
        '<p14:media xmlns:p14="http://schemas.microsoft.com/office/powerpoint/2010/main" r:link="{id}"/>')), "mp4"),
    Kind("diagram", PICTURES, "diagramData", "drawing", anchored(
        '<xdr:graphicFrame><xdr:nvGraphicFramePr><xdr:cNvPr id="{number}" name="D"/><xdr:cNvGraphicFramePr/>'
        '</xdr:nvGraphicFramePr><xdr:xfrm/><a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/'
        '2006/diagram"><dgm:relIds xmlns:dgm="http://schemas.openxmlformats.org/drawingml/2006/diagram" r:dm="{id}" '
        'r:lo="{id}" r:qs="{id}" r:cs="{id}"/></a:graphicData></a:graphic></xdr:graphicFrame>'), "xml"),
    Kind("whole chart", PICTURES, "chart", "drawing", anchored(
        '<xdr:graphicFrame><xdr:nvGraphicFramePr><xdr:cNvPr id="{number}" name="D"/><xdr:cNvGraphicFramePr/>'
        '</xdr:nvGraphicFramePr><xdr:xfrm/><a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/'
        '2006/chart"><c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" r:id="{id}"/>'
        "</a:graphicData></a:graphic></xdr:graphicFrame>"), "xml"),
    Kind("picture in a header", LEGACY, "image", "vml", '<v:shape id="LH{number}" type="#_x0000_t75" style="width:9pt;'
         'height:9pt"><v:imagedata o:relid="{id}" o:title="t"/></v:shape>'),
    Kind("picture in an old drawing", LEGACY, "image", "vml", '<v:shape id="s{number}" type="#_x0000_t75" style='
         '"position:absolute;width:9pt;height:9pt"><v:imagedata r:id="{id}"/><x:ClientData ObjectType="Pict"/></v:shape>'),
    Kind("picture named in an old drawing", "", "", "vml", '<v:shape id="n{number}" type="#_x0000_t75" style='
         '"position:absolute;width:9pt;height:9pt"><v:imagedata src="{address}"/><x:ClientData ObjectType="Pict"/>'
         "</v:shape>"),
    Kind("fill of an old drawing", LEGACY, "image", "vml", '<v:rect id="f{number}" style="position:absolute;width:9pt;'
         'height:9pt"><v:fill type="frame" o:relid="{id}" src="{address}" o:href="{address}"/><x:ClientData '
         'ObjectType="Rect"/></v:rect>'),
    Kind("hyperlink of an old drawing", "", "", "vml", '<v:rect id="h{number}" href="{address}" style='
         '"position:absolute;width:9pt;height:9pt"><x:ClientData ObjectType="Rect"/></v:rect>', "html"),
    Kind("picture behind a sheet", SHEET, "image", "tail", '<picture r:id="{id}"/>'),
    Kind("linked object", SHEET, "oleObject", "objects", '<oleObject progId="Excel.Sheet.12" link="[1]!\'\'\'\'" '
         'oleUpdate="OLEUPDATE_ALWAYS" shapeId="{number}" r:id="{id}"/>', "xlsx"),
    Kind("control", SHEET, "control", "controls", '<control shapeId="{number}" r:id="{id}" name="c{number}"/>', "xml"),
    Kind("hyperlink", SHEET, "hyperlink", "hyperlinks", '<hyperlink ref="A2" r:id="{id}"/>', "html"),
    Kind("settings of a printer", SHEET, "printerSettings", "page", "", "bin"),
    Kind("comments", SHEET, "comments", "", "", "xml"),
    Kind("table", SHEET, "table", "tables", '<tablePart r:id="{id}"/>', "xml"),
    Kind("pivot table", SHEET, "pivotTable", "", "", "xml"),
    Kind("query table", SHEET, "queryTable", "", "", "xml"),
    Kind("another drawing", SHEET, "drawing", "", "", "xml"),
    Kind("reference to a file", "book", "externalLinkPath", "cells", cell("[{book}]Data!A1*2"), "xlsx"),
    Kind("sum over a file", "book", "externalLinkPath", "cells", cell("SUM([{book}]Data!A1:B9)"), "xlsx"),
    Kind("name in a file", "book", "externalLinkPath", "cells", cell("[{book}]!thename"), "xlsx"),
    Kind("link whose path is missing", "book", "http://schemas.microsoft.com/office/2006/relationships/"
         "xlExternalLinkPath/xlPathMissing", "cells", cell("[{book}]Data!A1"), "xlsx"),
    Kind("conditional format", "book", "externalLinkPath", "formats", '<conditionalFormatting sqref="A2"><cfRule '
         'type="expression" dxfId="0" priority="{number}"><formula>[{book}]Data!A1&gt;1</formula></cfRule>'
         "</conditionalFormatting>", "xlsx"),
    Kind("rule for input", "book", "externalLinkPath", "validations", '<dataValidation type="list" sqref="A2"><formula1>'
         "[{book}]Data!A1:A9</formula1></dataValidation>", "xlsx"),
    Kind("name that stands for a file", "book", "externalLinkPath", "names",
         '<definedName name="far{number}">[{book}]Data!$A$1</definedName>', "xlsx"),
    Kind("data of a chart", "book", "externalLinkPath", "series", "<c:ser><c:idx val='{number}'/><c:order val="
         "'{number}'/><c:val><c:numRef><c:f>[{book}]Data!$A$1:$A$3</c:f></c:numRef></c:val></c:ser>", "xlsx"),
    Kind("workbook of a chart", CHART, "package", "chart end", '<c:externalData r:id="{id}"><c:autoUpdate val="1"/>'
         "</c:externalData>", "xlsx"),
    Kind("picture in a chart", CHART, "image", "chart end", '<c:spPr><a:blipFill><a:blip r:link="{id}"/></a:blipFill>'
         "</c:spPr>"),
    Kind("data exchange", "exchange", "", "cells", cell("[{book}]!'Data.A1'"), "ods"),
    Kind("linked object as formula", "object", "oleObject", "cells", cell("[{book}]!'Data'"), "xlsx"),
    Kind("computed reference", "", "", "cells", cell("INDIRECT(\"'{address}'#$Data.A\"&amp;1)"), "ods"),
    Kind("computed reference in brackets", "", "", "cells", cell("INDIRECT(\"'{folder}[{file}]Data'!A\"&amp;1)"), "xlsx"),
    Kind("computed reference in R1C1", "", "", "cells",
         cell("INDIRECT(\"'{folder}[{file}]Data'!R1C\"&amp;1,FALSE)"), "xlsx"),
    Kind("asks a server", "", "", "cells", cell("_xlfn.WEBSERVICE(\"{address}\")", ' t="str"'), "xml"),
    Kind("asks a server, computed", "", "", "cells", cell("_xlfn.WEBSERVICE(\"{address}\"&amp;\"\")", ' t="str"'), "xml"),
    Kind("reads XML of a server", "", "", "cells",
         cell("_xlfn.FILTERXML(_xlfn.WEBSERVICE(\"{address}\"),\"/a\")", ' t="str"'), "xml"),
    Kind("picture as formula", "", "", "cells", cell("_xlfn.IMAGE(\"{address}\")", ' t="str"'), "png"),
    Kind("hyperlink as formula", "", "", "cells", cell("HYPERLINK(\"{address}\",\"more\")", ' t="str"'), "html"),
    Kind("data exchange as formula", "", "", "cells", cell("DDE(\"soffice\",\"{address}\",\"Data.A1\")"), "ods"),
    Kind("page of the net", "", "", "connections", '<connection id="{number}" name="w{number}" type="4" '
         'refreshedVersion="4" refreshOnLoad="1" background="1"><webPr sourceData="1" url="{address}" '
         'htmlTables="1"><tables count="1"><x v="1"/></tables></webPr></connection>', "html"),
    Kind("text file", "", "", "connections", '<connection id="{number}" name="t{number}" type="6" refreshedVersion="4" '
         'refreshOnLoad="1" sourceFile="{address}"><textPr sourceFile="{address}"/></connection>', "csv"),
    Kind("database", "", "", "connections", '<connection id="{number}" name="d{number}" type="1" odcFile="{address}" '
         'refreshedVersion="4" refreshOnLoad="1"><dbPr connection="DRIVER=none;DBQ={address}" command="SELECT 1"/>'
         "</connection>", "odc"),
    Kind("cube", "", "", "connections", '<connection id="{number}" name="c{number}" type="5" refreshedVersion="4" '
         'refreshOnLoad="1"><olapPr localConnection="{address}"/></connection>', "cub"),
    Kind("source of a pivot table", "xl/pivotCache/pivotCacheDefinition1.xml", "externalLinkPath", "source",
         '<worksheetSource ref="A1:B9" sheet="Data" r:id="{id}"/>', "xlsx"),
    Kind("another sheet", BOOK, "worksheet", "sheets", '<sheet name="Far{number}" sheetId="{number}" r:id="{id}"/>', "xml"),
    Kind("texts", BOOK, "sharedStrings", "", "", "xml"),
    Kind("styles", BOOK, "styles", "", "", "xml"),
    Kind("macros", BOOK, "http://schemas.microsoft.com/office/2006/relationships/vbaProject", "", "", "bin"),
    Kind("picture of the theme", "xl/theme/theme1.xml", "image", "fills", '<a:blipFill><a:blip r:link="{id}"/><a:stretch/>'
         "</a:blipFill>"),
    Kind("template", "docProps/custom.xml", "attachedTemplate", "", "", "xltx"),
    Kind("preview", "", "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail", "", "", "png"),
    Kind("web extension", "", "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes", "", "",
         "xml"),
    Kind("picture of a cell", "xl/richData/richValueRel.xml", "image", "", "", "png"),
]


def package(kinds, address):
    """The entries of an .xlsx that holds these kinds."""
    places, relations, books = {}, {}, []
    for number, kind in enumerate(kinds, 1):
        target = address(kind)
        text = kind.text
        identifier = f"far{number}"
        if kind.part in ("book", "exchange", "object"):
            books.append((kind, target))
            text = text.replace("{book}", str(len(books)))
        elif kind.relation:
            relations.setdefault(kind.part, []).append((identifier, kind.relation, target, True))
        folder, _, file = target.rpartition("/")
        for word, value in {"id": identifier, "number": str(number), "address": target, "folder": folder + "/",
                            "file": file}.items():
            text = text.replace("{" + word + "}", value)
        places.setdefault(kind.place, []).append(text)

    def at(place):
        return "".join(places.get(place, []))

    def add(part, identifier, kind, target):
        relations.setdefault(part, []).append((identifier, kind, target, False))

    entries = {}
    add("", "book", "officeDocument", BOOK)
    add("", "custom", "custom-properties", "docProps/custom.xml")
    add(BOOK, "sheet", "worksheet", "worksheets/sheet1.xml")
    add(BOOK, "theme", "theme", "theme/theme1.xml")
    add(BOOK, "connections", "connections", "connections.xml")
    add(BOOK, "cache", "pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml")
    add(BOOK, "rich", "http://schemas.microsoft.com/office/2022/10/relationships/richValueRel", "richData/richValueRel.xml")
    add(SHEET, "drawing", "drawing", "../drawings/drawing1.xml")
    add(SHEET, "vml", "vmlDrawing", "../drawings/vml1.vml")
    add(SHEET, "query", "queryTable", "../queryTables/queryTable1.xml")
    add(PICTURES, "chart", "chart", "../charts/chart1.xml")
    for number, (kind, target) in enumerate(books, 1):
        part = f"xl/externalLinks/externalLink{number}.xml"
        add(BOOK, f"book{number}", "externalLink", f"externalLinks/externalLink{number}.xml")
        if kind.part == "exchange":
            content = (
                f'<ddeLink ddeService="soffice" ddeTopic="{target}"><ddeItems><ddeItem name="Data.A1" advise="1"/>'
                "</ddeItems></ddeLink>"
            )
        elif kind.part == "object":
            relations.setdefault(part, []).append(("far", "oleObject", target, True))
            content = '<oleLink r:id="far" progId="Excel.Sheet.12"><oleItems><oleItem name="Data" advise="1"/></oleItems></oleLink>'
        else:
            relations.setdefault(part, []).append(("far", kind.relation, target, True))
            content = (
                '<externalBook r:id="far"><sheetNames><sheetName val="Data"/></sheetNames><definedNames><definedName '
                'name="thename" refersTo="=Data!$A$1"/></definedNames><sheetDataSet><sheetData sheetId="0"><row r="1">'
                '<cell r="A1"><v>3.5</v></cell></row></sheetData></sheetDataSet></externalBook>'
            )
        entries[part] = f'<externalLink xmlns="{MAIN}" xmlns:r="{REL}">{content}</externalLink>'
    entries[BOOK] = (
        f'<workbook xmlns="{MAIN}" xmlns:r="{REL}"><sheets><sheet name="Data" sheetId="901" r:id="sheet"/>{at("sheets")}'
        "</sheets><externalReferences>"
        + "".join(f'<externalReference r:id="book{number}"/>' for number in range(1, len(books) + 1))
        + f'</externalReferences><definedNames>{at("names")}</definedNames><pivotCaches><pivotCache cacheId="1" '
        'r:id="cache"/></pivotCaches></workbook>'
    )
    entries[SHEET] = (
        f'<worksheet xmlns="{MAIN}" xmlns:r="{REL}"><sheetData>'
        "<row><c><f>HEARTHCELL.STOVE.BOILINGPOINT(1500)</f><v>95</v></c></row><row><c><v>7</v></c></row>"
        + "".join(f"<row>{text}</row>" for text in places.get("cells", []))
        + f'</sheetData>{at("formats")}'
        + (f'<dataValidations>{at("validations")}</dataValidations>' if "validations" in places else "")
        + (f'<hyperlinks>{at("hyperlinks")}</hyperlinks>' if "hyperlinks" in places else "")
        + '<drawing r:id="drawing"/><legacyDrawing r:id="vml"/><legacyDrawingHF r:id="vml"/>' + at("tail")
        + (f'<oleObjects>{at("objects")}</oleObjects>' if "objects" in places else "")
        + (f'<controls>{at("controls")}</controls>' if "controls" in places else "")
        + (f'<tableParts>{at("tables")}</tableParts>' if "tables" in places else "")
        + "</worksheet>"
    )
    entries[PICTURES] = (
        f'<xdr:wsDr xmlns:xdr="{DRAWING}/spreadsheetDrawing" xmlns:a="{DRAWING}/main" xmlns:r="{REL}">{at("drawing")}'
        + anchored(
            '<xdr:graphicFrame><xdr:nvGraphicFramePr><xdr:cNvPr id="900" name="C"/><xdr:cNvGraphicFramePr/>'
            "</xdr:nvGraphicFramePr><xdr:xfrm><a:off x='0' y='0'/><a:ext cx='0' cy='0'/></xdr:xfrm><a:graphic>"
            f'<a:graphicData uri="{DRAWING}/chart"><c:chart xmlns:c="{DRAWING}/chart" r:id="chart"/></a:graphicData>'
            "</a:graphic></xdr:graphicFrame>"
        )
        + "</xdr:wsDr>"
    )
    entries[CHART] = (
        f'<c:chartSpace xmlns:c="{DRAWING}/chart" xmlns:a="{DRAWING}/main" xmlns:r="{REL}"><c:chart><c:plotArea>'
        f'<c:barChart><c:barDir val="col"/>{at("series")}<c:axId val="1"/><c:axId val="2"/></c:barChart></c:plotArea>'
        f'</c:chart>{at("chart end")}</c:chartSpace>'
    )
    entries[LEGACY] = (
        '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" '
        f'xmlns:x="urn:schemas-microsoft-com:office:excel" xmlns:r="{REL}">{at("vml")}</xml>'
    )
    entries["xl/connections.xml"] = f'<connections xmlns="{MAIN}">{at("connections")}</connections>'
    web = [number for number, kind in enumerate(kinds, 1) if kind.name == "page of the net"]
    entries["xl/queryTables/queryTable1.xml"] = (
        f'<queryTable xmlns="{MAIN}" name="q" connectionId="{web[0] if web else 1}" refreshOnLoad="1"/>'
    )
    entries["xl/pivotCache/pivotCacheDefinition1.xml"] = (
        f'<pivotCacheDefinition xmlns="{MAIN}" xmlns:r="{REL}" refreshOnLoad="1"><cacheSource type="worksheet">'
        f'{at("source")}</cacheSource><cacheFields count="0"/></pivotCacheDefinition>'
    )
    entries["xl/richData/richValueRel.xml"] = (
        '<richValueRels xmlns="http://schemas.microsoft.com/office/spreadsheetml/2022/richvaluerel"/>'
    )
    entries["xl/theme/theme1.xml"] = (
        f'<a:theme xmlns:a="{DRAWING}/main" xmlns:r="{REL}" name="t"><a:themeElements><a:fmtScheme name="f">'
        f'<a:fillStyleLst>{at("fills")}</a:fillStyleLst></a:fmtScheme></a:themeElements></a:theme>'
    )
    entries["docProps/custom.xml"] = (
        '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties"/>'
    )
    types = {
        "/" + BOOK: "sheet.main", "/" + SHEET: "worksheet", "/xl/connections.xml": "connections",
        "/xl/queryTables/queryTable1.xml": "queryTable",
        "/xl/pivotCache/pivotCacheDefinition1.xml": "pivotCacheDefinition",
    }
    for part in entries:
        if part.startswith("xl/externalLinks/"):
            types["/" + part] = "externalLink"
    office = "application/vnd.openxmlformats-officedocument."
    entries["[Content_Types].xml"] = (
        f'<Types xmlns="{PACKAGE}/content-types"><Default Extension="rels" ContentType='
        '"application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType='
        f'"application/xml"/><Default Extension="vml" ContentType="{office}vmlDrawing"/>'
        + "".join(
            f'<Override PartName="{part}" ContentType="{office}spreadsheetml.{kind}+xml"/>'
            for part, kind in types.items()
        )
        + f'<Override PartName="/{PICTURES}" ContentType="{office}drawing+xml"/><Override PartName="/{CHART}" '
        f'ContentType="{office}drawingml.chart+xml"/><Override PartName="/xl/theme/theme1.xml" '
        f'ContentType="{office}theme+xml"/></Types>'
    )
    for part, list_of in relations.items():
        folder, _, name = part.rpartition("/")
        entries[f"{folder}/_rels/{name}.rels".lstrip("/")] = (
            f'<Relationships xmlns="{PACKAGE}/relationships">'
            + "".join(
                f'<Relationship Id="{identifier}" Type="{kind if ":" in kind else REL + "/" + kind}" Target="{target}"'
                + (' TargetMode="External"/>' if external else "/>")
                for identifier, kind, target, external in list_of
            )
            + "</Relationships>"
        )
    return {name: '<?xml version="1.0" encoding="UTF-8"?>' + text for name, text in entries.items()}
