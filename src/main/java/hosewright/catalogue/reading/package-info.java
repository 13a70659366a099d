/**
 * A dealer's tables read row by row into items, prices and costs, all or nothing. It knows which
 * cells a row has and what must hold between them; it opens no file. {@link
 * hosewright.catalogue.reading.CatalogueReader} is the way in.
 */
package hosewright.catalogue.reading;
