-- Counts by hand, goods a customer sends back or a supplier brings too many of, what is agreed on
-- for a purchase order, drafts that are given up, and what other currencies are worth. A column
-- added here is empty in rows kept before: what they say, and so their seals, stays the same.

ALTER TABLE STOCK_MOVEMENT DROP CONSTRAINT CK_STOCK_MOVEMENT_KIND;
ALTER TABLE STOCK_MOVEMENT ADD CONSTRAINT CK_STOCK_MOVEMENT_KIND
  CHECK (KIND IN ('COUNTED', 'RECEIVED', 'SHIPPED', 'RETURNED', 'SENT_BACK'));
-- Why somebody counted, took back or sent back; empty where it goes without saying.
ALTER TABLE STOCK_MOVEMENT ADD COLUMN REASON VARCHAR(1000);

-- Pieces the customer sent back, of those shipped; empty for none.
ALTER TABLE ORDER_LINE ADD COLUMN RETURNED INTEGER;
ALTER TABLE ORDER_LINE ADD CONSTRAINT CK_ORDER_LINE_RETURNED
  CHECK (RETURNED >= 0 AND RETURNED <= SHIPPED);

-- Yes where nobody supplies some of it: the day on paper is then no promise.
ALTER TABLE CUSTOMER_ORDER ADD COLUMN SHIP_OPEN BOOLEAN;

-- Pieces that came beyond those bought and were kept; empty for none.
ALTER TABLE PURCHASE_LINE ADD COLUMN OVER_TAKEN INTEGER;
ALTER TABLE PURCHASE_LINE ADD CONSTRAINT CK_PURCHASE_LINE_OVER_TAKEN CHECK (OVER_TAKEN >= 0);

-- What the supplier asks for carriage; empty where nothing was agreed.
ALTER TABLE PURCHASE_ORDER ADD COLUMN FREIGHT NUMERIC(15, 4);
ALTER TABLE PURCHASE_ORDER ADD COLUMN FREIGHT_CURRENCY VARCHAR(3);
ALTER TABLE PURCHASE_ORDER ADD CONSTRAINT CK_PURCHASE_ORDER_FREIGHT CHECK (FREIGHT >= 0);

-- A draft that nobody will issue. Its revision keeps its number.
ALTER TABLE QUOTE DROP CONSTRAINT CK_QUOTE_STATUS;
ALTER TABLE QUOTE ADD CONSTRAINT CK_QUOTE_STATUS
  CHECK (STATUS IN ('DRAFT', 'ISSUED', 'ACCEPTED', 'DECLINED', 'EXPIRED', 'DISCARDED'));

-- Who waits for an item and what will bring it is asked whenever goods come.
CREATE INDEX IX_ORDER_LINE_STOCK ON ORDER_LINE (STOCK_CODE);
CREATE INDEX IX_PURCHASE_LINE_STOCK ON PURCHASE_LINE (STOCK_CODE);

-- What one unit of a currency is worth in another, from a day on until the next row.
CREATE TABLE EXCHANGE_RATE (
  CURRENCY VARCHAR(3) NOT NULL,
  INTO_CURRENCY VARCHAR(3) NOT NULL,
  VALID_FROM DATE NOT NULL,
  RATE NUMERIC(18, 8) NOT NULL,
  SOURCE VARCHAR(200) NOT NULL,
  ENTERED_BY VARCHAR(100) NOT NULL,
  ENTERED_AT TIMESTAMP(6) WITH TIME ZONE NOT NULL,
  SEAL BIGINT NOT NULL,
  CONSTRAINT PK_EXCHANGE_RATE PRIMARY KEY (CURRENCY, INTO_CURRENCY, VALID_FROM),
  CONSTRAINT CK_EXCHANGE_RATE_RATE CHECK (RATE > 0)
);
