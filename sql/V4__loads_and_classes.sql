-- What a load came from, so that a price's history can say which file brought it.
ALTER TABLE CATALOGUE_LOAD ADD COLUMN SOURCE VARCHAR(300) DEFAULT '' NOT NULL;

-- Buyers somebody entered one by one stay when a file of buyers that does not list them is loaded.
ALTER TABLE CUSTOMER ADD COLUMN ENTERED BOOLEAN DEFAULT FALSE NOT NULL;

-- The least margin wanted of each class of buyers.
CREATE TABLE MARGIN_FLOOR (
  CUSTOMER_CLASS VARCHAR(40) NOT NULL,
  FLOOR NUMERIC(9, 6) NOT NULL,
  FILE_ORDER INTEGER NOT NULL,
  CONSTRAINT PK_MARGIN_FLOOR PRIMARY KEY (CUSTOMER_CLASS),
  CONSTRAINT CK_MARGIN_FLOOR_FLOOR CHECK (FLOOR >= 0 AND FLOOR < 1)
);
