import{A as zf,B as Kf,C as dn,D as Jf,E as Vf,F as Qf,G as re,H as we,I as Gf,J as Yf,K as ct,L as On,M as vr,N as Rt,O as Yd,P as Zf,Q as Xf,S as eh,T as th,U as nh,a as Pf,b as Of,c as B,d as w,e as Ff,f as Pn,g as Tt,h as ta,i as Ke,j as $i,k as Mf,l as Lf,m as Bf,n as Cf,o as Wf,p as Lo,q as If,r as Ef,s as na,t as Nf,u as jf,v as Gd,w as Hf,x as qf,y as ln,z as Uf}from"./chunk-OK3W3KGQ.js";var oa=globalThis,ra=oa.ShadowRoot&&(oa.ShadyCSS===void 0||oa.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,ih=Symbol(),oh=new WeakMap,ia=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==ih)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(ra&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=oh.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&oh.set(n,t))}return t}toString(){return this.cssText}},rh=e=>new ia(typeof e=="string"?e:e+"",void 0,ih);var sh=(e,t)=>{if(ra)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=oa.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Zd=ra?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return rh(n)})(e):e;var{is:Yx,defineProperty:Zx,getOwnPropertyDescriptor:Xx,getOwnPropertyNames:eT,getOwnPropertySymbols:tT,getPrototypeOf:nT}=Object,sa=globalThis,ah=sa.trustedTypes,oT=ah?ah.emptyScript:"",iT=sa.reactiveElementPolyfillSupport,kr=(e,t)=>e,Xd={toAttribute(e,t){switch(t){case Boolean:e=e?oT:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},dh=(e,t)=>!Yx(e,t),lh={attribute:!0,type:String,converter:Xd,reflect:!1,useDefault:!1,hasChanged:dh};Symbol.metadata??=Symbol("metadata"),sa.litPropertyMetadata??=new WeakMap;var Fn=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=lh){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Zx(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=Xx(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let u=i?.call(this);r?.call(this,l),this.requestUpdate(t,u,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??lh}static _$Ei(){if(this.hasOwnProperty(kr("elementProperties")))return;let t=nT(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(kr("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(kr("properties"))){let n=this.properties,o=[...eT(n),...tT(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Zd(i))}else t!==void 0&&n.push(Zd(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return sh(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Xd).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Xd;this._$Em=i;let u=l.fromAttribute(n,r.type);this[i]=u??this._$Ej?.get(i)??u,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??dh)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,u=this[i];l!==!0||this._$AL.has(i)||u===void 0||this.C(i,void 0,r,u)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Fn.elementStyles=[],Fn.shadowRootOptions={mode:"open"},Fn[kr("elementProperties")]=new Map,Fn[kr("finalized")]=new Map,iT?.({ReactiveElement:Fn}),(sa.reactiveElementVersions??=[]).push("2.1.2");var tu=globalThis,uh=e=>e,aa=tu.trustedTypes,ch=aa?aa.createPolicy("lit-html",{createHTML:e=>e}):void 0,nu="$lit$",Mn=`lit$${Math.random().toFixed(9).slice(2)}$`,ou="?"+Mn,rT=`<${ou}>`,Wo=document,Tr=()=>Wo.createComment(""),Rr=e=>e===null||typeof e!="object"&&typeof e!="function",iu=Array.isArray,_h=e=>iu(e)||typeof e?.[Symbol.iterator]=="function",eu=`[ 	
\f\r]`,xr=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,ph=/-->/g,mh=/>/g,Bo=RegExp(`>|${eu}(?:([^\\s"'>=/]+)(${eu}*=${eu}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),fh=/'/g,hh=/"/g,$h=/^(?:script|style|textarea|title)$/i,ru=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=ru(1),R=ru(2),sW=ru(3),Je=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),gh=new WeakMap,Co=Wo.createTreeWalker(Wo,129);function bh(e,t){if(!iu(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return ch!==void 0?ch.createHTML(t):t}var wh=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=xr;for(let u=0;u<n;u++){let c=e[u],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===xr?m[1]==="!--"?l=ph:m[1]!==void 0?l=mh:m[2]!==void 0?($h.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Bo):m[3]!==void 0&&(l=Bo):l===Bo?m[0]===">"?(l=i??xr,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Bo:m[3]==='"'?hh:fh):l===hh||l===fh?l=Bo:l===ph||l===mh?l=xr:(l=Bo,i=void 0);let v=l===Bo&&e[u+1].startsWith("/>")?" ":"";r+=l===xr?c+rT:_>=0?(o.push(p),c.slice(0,_)+nu+c.slice(_)+Mn+v):c+Mn+(_===-2?u:v)}return[bh(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Sr=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,u=t.length-1,c=this.parts,[p,m]=wh(t,n);if(this.el=e.createElement(p,o),Co.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Co.nextNode())!==null&&c.length<u;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(nu)){let b=m[l++],v=i.getAttribute(_).split(Mn),T=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:T[2],strings:v,ctor:T[1]==="."?da:T[1]==="?"?ua:T[1]==="@"?ca:Eo}),i.removeAttribute(_)}else _.startsWith(Mn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if($h.test(i.tagName)){let _=i.textContent.split(Mn),b=_.length-1;if(b>0){i.textContent=aa?aa.emptyScript:"";for(let v=0;v<b;v++)i.append(_[v],Tr()),Co.nextNode(),c.push({type:2,index:++r});i.append(_[b],Tr())}}}else if(i.nodeType===8)if(i.data===ou)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(Mn,_+1))!==-1;)c.push({type:7,index:r}),_+=Mn.length-1}r++}}static createElement(t,n){let o=Wo.createElement("template");return o.innerHTML=t,o}};function Io(e,t,n=e,o){if(t===Je)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Rr(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=Io(e,i._$AS(e,t.values),i,o)),t}var la=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Wo).importNode(n,!0);Co.currentNode=i;let r=Co.nextNode(),l=0,u=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new bi(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new pa(r,this,t)),this._$AV.push(p),c=o[++u]}l!==c?.index&&(r=Co.nextNode(),l++)}return Co.currentNode=Wo,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},bi=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=d,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Io(this,t,n),Rr(t)?t===d||t==null||t===""?(this._$AH!==d&&this._$AR(),this._$AH=d):t!==this._$AH&&t!==Je&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):_h(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==d&&Rr(this._$AH)?this._$AA.nextSibling.data=t:this.T(Wo.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Sr.createElement(bh(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new la(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=gh.get(t.strings);return n===void 0&&gh.set(t.strings,n=new Sr(t)),n}k(t){iu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(Tr()),this.O(Tr()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=uh(t).nextSibling;uh(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Eo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=d,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=d}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=Io(this,t,n,0),l=!Rr(t)||t!==this._$AH&&t!==Je,l&&(this._$AH=t);else{let u=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=Io(this,u[o+c],n,c),p===Je&&(p=this._$AH[c]),l||=!Rr(p)||p!==this._$AH[c],p===d?t=d:t!==d&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===d?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},da=class extends Eo{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===d?void 0:t}},ua=class extends Eo{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==d)}},ca=class extends Eo{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=Io(this,t,n,0)??d)===Je)return;let o=this._$AH,i=t===d&&o!==d||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==d&&(o===d||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},pa=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){Io(this,t)}},yh={M:nu,P:Mn,A:ou,C:1,L:wh,R:la,D:_h,V:Io,I:bi,H:Eo,N:ua,U:ca,B:da,F:pa},sT=tu.litHtmlPolyfillSupport;sT?.(Sr,bi),(tu.litHtmlVersions??=[]).push("3.3.3");var St=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new bi(t.insertBefore(Tr(),r),r,void 0,n??{})}return i._$AI(e),i};var su=globalThis,wi=class extends Fn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=St(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Je}};wi._$litElement$=!0,wi.finalized=!0,su.litElementHydrateSupport?.({LitElement:wi});var aT=su.litElementPolyfillSupport;aT?.({LitElement:wi});(su.litElementVersions??=[]).push("4.2.2");var kh=()=>{},au=!1,ma=!1,du=!1;function xh(e){kh=e}function Q(){au||(au=!0,queueMicrotask(()=>{au=!1,ma?du=!0:Th()}))}function Th(){du=!1,kh()}var lT=1500,lu=0;function vh(){clearTimeout(lu),ma=!1,du&&Th()}function Rh(){let e=({target:t})=>{!(t instanceof Element)||t.closest("[role=slider], select, canvas")||(ma=!0,clearTimeout(lu),lu=window.setTimeout(vh,lT))};addEventListener("pointerdown",e,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>setTimeout(vh),!0);addEventListener("click",()=>ma=!1,!0)}function Sh(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var j=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of Sh(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(e,t,n){return uu(e,Sh(t),n)}function uu(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let u=[...e],c=uu(u[Number(o)],i,n);return c===void 0?u.splice(Number(o),1):u[Number(o)]=c,u}let r={...e??{}},l=uu(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Ah=e=>Pn("GET",`/api/bench?run=${encodeURIComponent(e)}`),Dh=e=>Tt("/api/bench/tick",e),Ph=e=>Tt("/api/bench/weigh_cup",e),Oh=(e,t)=>Tt("/api/bench/anew",{run:e,batch:t}),Fh=(e,t)=>Tt("/api/bench/finish",{run:e,batch:t});var de=(e,t)=>({name:e,label:t,unit:"mm"}),Gn=de("height","Floor to brim"),fa={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},cu={block:{words:"Box, loaf or slab",measures:[de("length","Longer side at the brim"),de("width","Shorter side"),Gn,fa,{...de("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn]},fluted_cup:{words:"Fluted cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn,{name:"flutes",label:"Flutes",unit:"",count:!0},de("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},de("across_flats","Across the flats"),Gn,fa]},dome:{words:"Bowl",measures:[de("diameter","Across the brim"),Gn]},half_ball:{words:"Half ball",measures:[de("diameter","Across the brim")]},ball:{words:"Ball",measures:[de("diameter","Across")]},half_ring:{words:"Half ring",measures:[de("centre_diameter","Ring, middle to middle of the tube"),de("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[de("outer_floor_diameter","Cup, across the floor"),de("outer_brim_diameter","Cup, across the brim"),de("post_floor_diameter","Post, at its foot"),de("post_brim_diameter","Post, at its top"),Gn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[de("height","Height"),de("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Gn,fa],points:{columns:[de("x","From the left"),de("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[de("side","Straight edge, tip to round"),Gn,fa]}},Mh=Object.fromEntries(Object.entries(cu).map(([e,{words:t}])=>[e,t])),yi=e=>cu[e]?.measures??[],Yn=e=>cu[e]?.points;var pu=(e,t)=>String($(e,t)??"").trim(),Ar=e=>pu(e,"/shape/kind"),jt=(e,t)=>$(e,`/${t}`)!==void 0,mu=e=>["body","skin"].includes(pu(e,"/mesh/role"));function pt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Lh(e,t){return(Yn(Ar(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Dr(e){return pt(e,"/shape/points").flatMap((t,n)=>Lh(e,t).every(Boolean)?[n]:[])}function ha(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return pt(e,"/shape/points").flatMap((n,o)=>t(Lh(e,n))?[o]:[])}var fu=e=>pt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Bh(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=M(t,o,r)};return Yn(Ar(e))&&n("/shape/points",Dr(e)),n("/water/weighings",fu(e)),t}function ga(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Dr(e):fu(e);return`${n}/${r[Number(o)]??o}${i}`}function Pr(e){let t=[],n=i=>pu(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(jt(e,"shape")){let i=Ar(e);o(i!=="","the shape");for(let{name:l,label:u,optional:c}of yi(i))o(c||n(`/shape/${l}`),u.toLowerCase());let r=Yn(i);r&&o(Dr(e).length>=r.least,`${r.least} points at least`)}if(jt(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(fu(e).length>0,"a weighing of water")}return!mu(e)&&!jt(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Le=e=>e.slice(0,e.lastIndexOf("/")+1),mt=e=>e.slice(e.lastIndexOf("/")+1),At=(e,t)=>{let n=Le(e);return n?dT(n+t):t};function dT(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Ht(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function vi(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var uT=["mould","formula","run","file","own_fats","own_tips"];function hu(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?hu(o,i):uT.includes(n)?[i]:[]})}function gu(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...hu(e)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function _u(e,t){let n=["/id",...hu(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?M(i,r,$(t,r)):i,o)}var No={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Ht(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},jo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>Ht(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},Ho={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Ht(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},$u=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>mt(o),written:o=>o,is_begun:()=>!0}),Or=$u("studio","studios","name"),un=$u("fats","fats"),Zn=$u("tips","tips","title"),it={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>Ht(String(e.name),".json"),written:e=>({...Bh(e),name:String(e.name??"").trim()}),is_begun:e=>jt(e,"shape")||jt(e,"mesh")};var Ch={},Wh={kind:No,id:"",file:"",version:null,shipped:!1,now:Ch,saved:Ch,unanswered:[]},Se={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Wh,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},learned:{},ways:{},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(mT()),folded:new Set,units:cT(),announcement:""},a=Se;function cT(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var bu=e=>`numbers ${String(e.now.id??e.file)}`,pT=e=>({numbers:localStorage.getItem(bu(e))??void 0,figure:""});function Fr(e){f({quote_wish:{...Se.quote_wish,...e}});let{numbers:t}=Se.quote_wish;t?.trim()?localStorage.setItem(bu(Se.run),t):localStorage.removeItem(bu(Se.run))}var Ih="set-up ";function mT(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function fT(){let e=[...Se.open].filter(t=>t.startsWith(Ih));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Se,e),Q()}var D=e=>f({announcement:e});function y(e,t){Object.assign(e,t),Q()}function Ln(e,t){let{[e]:n,...o}=Se.formulas;f({formulas:t?{...o,[e]:t}:o})}function He(e,t){let n=new Set(Se[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(Ih)&&fT()}function ki(e=Wh){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:pT(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function ue(e){Se.open.has(e)||f({open:new Set(Se.open).add(e)})}function qo({list:e,called:t},n,o={}){if(!Se.files)return;let i=Se.files[e].findIndex(u=>u.file===n),r={...i<0?{}:Se.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Se.files[e].filter(u=>u.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Se.files,[e]:l}})}function Eh({list:e},t,n){if(!Se.files)return;let o=Se.files[e].map(l=>l.file===t?{...l,file:n}:l),i=Se.list_open,r=i?.file===t?Object.assign(i,{file:n}):i;f({files:{...Se.files,[e]:o},list_open:r})}var hT=1e4,wu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",wu);var _a=[],xi=()=>`bench ${a.files?.folder??""}`;function ft(){try{return[...JSON.parse(localStorage.getItem(xi())??"[]"),..._a]}catch{return _a}}function yu(e){try{e.length?localStorage.setItem(xi(),JSON.stringify(e)):localStorage.removeItem(xi()),_a=[]}catch{_a=e}}var gT=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function Nh(e){let t={...e,id:crypto.randomUUID(),tab:wu,at:Date.now()};yu([...ft().filter(n=>!gT(n,t)),t])}var $a=e=>yu(ft().filter(t=>!e(t))),jh=(e,t)=>yu(ft().map(n=>n.run===e?{...n,run:t}:n)),vu=()=>ft().find(e=>e.tab===wu||Date.now()-e.at>hT);var he=["pour","pipe","apart"],Ae=["studio","own_fats","own_tips"],ba=e=>Ae.includes(e);var ku=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],xu=()=>Ae.flatMap(e=>a.beside[e]??[]),Hh=e=>e.filter(t=>t.theirs),Bn=e=>Hh([...ku(e==="apart"?["apart"]:["pour","pipe"]),...xu()])[0],wa=()=>[a.run,...ku(he),...xu()].filter(e=>e.is_taken&&!e.theirs),ya=()=>Hh([a.run,...ku(he),...xu()]);var Mr=()=>a.formulas.apart?"apart":"run",qh=e=>f({dangers:{...a.dangers,[Mr()]:e}});function Tu(e){let t=e.cautions.filter(n=>n.severity==="danger");qh(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Uh(e){e.lye_heavy&&qh([{text:B(e),is_of_heat:!1}])}var zh={};function qt(e,t){(zh[e]??=[]).push(t)}function ye(e,t){for(let n of zh[e]??[])n(t)}var Lr=new Map,Ut=e=>{Lr.set(e,void 0)},Xn=(e,t)=>{Lr.set(e,t)};function Kh(e,t){if(!Lr.has(e))return!1;let n=Lr.get(e);return n===void 0&&Lr.set(e,t),n===void 0||n===t}async function Dt({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:u=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:v=[]}=a.files??{},T=vi(t,[...u,...c,...p,...m,..._,...b,...v]);r?.(T);let V=await _T({file:T,version:null,text:n,from:o,goes_on:i});if(qo(e,T,we(V.there.text)??{}),V.is_new||l?.(V.there))return V.there}}async function _T(e){try{Ut(e.file);let t=await $i(e);return Xn(t.file,t.version),{is_new:!0,there:t}}catch(t){if(!(t instanceof w)||t.status!==409)throw t;return Xn(e.file,null),{is_new:!1,there:t.answer}}}var va=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Uo({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let u={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(va(e)+t,JSON.stringify(u))}catch{}}function Ru(e,t){try{return JSON.parse(localStorage.getItem(va(e)+t)??"null")??void 0}catch{return}}var eo=(e,t)=>localStorage.removeItem(va(e)+t),Jh=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function ka(e){let t=va(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Ru(e,o)??[])}var $T=300,G=e=>e.now!==e.saved;function zo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Ie(e,t,n=t){let o=await th(t),i=bT(e,JSON.parse(o.text),o.shipped),r=Ru(e,n),l=r?.copy&&o.shipped?await wT(e,r,i):void 0;if(l)return eo(e,n),Ie(e,l);let{version:u,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:u,shipped:c,now:i,saved:i,unanswered:[]};return r&&yT(p,r,o),p}var bT=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function wT(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=we(t.text),i=we((await Ke(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return gu(e.written(o),i)?t.copy:void 0}function yT(e,t,n){let o=we(t.text);if(!o||re(o)===re(e.now))return eo(e.kind,e.id);y(e,{now:o}),!(t.version===n.version||n.shipped)&&(y(e,{version:t.version}),ng(e,n))}function Ee(e,t){let n=e.now;y(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Uo(e),ye("edited",{file:e,before:n})}var Vh=new WeakMap,Su=async e=>Vh.get(e),cn=e=>Qh(e,()=>vT(e)),to=e=>Qh(e,()=>e.shipped?Gh(e,Yh):Promise.resolve());function Qh(e,t){let n=Su(e).then(t);return Vh.set(e,n.catch(()=>{})),n}async function vT(e){!G(e)||e.theirs||await Gh(e,e.shipped||!e.file?Yh:Zh)}async function Gh(e,t){y(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof w&&y(e,{failed:B(n.complaint)}),n}}async function Yh(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await Dt({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>Uo(e,m),is_own:({text:m})=>i!==void 0&&gu(r,we(m)??{})}),u=JSON.parse(l.text),c=_u(r,u),p=e.now===o?u:c(e.now);eo(t,n),y(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:u}),G(e)&&Uo(e),i!==void 0&&ye("copied",{file:e,from:i,renamed:c})}async function Zh(e){let{version:t,now:n}=e,o=re(e.kind.written(n));y(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Ut(e.file);let i=await $i({file:e.file,version:t,text:o});Xn(e.file,i.version),Br(e,n,i.version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Xn(e.file,t),Xh(e,i.answer),G(e)&&!e.theirs&&await Zh(e)}}function Br(e,t,n){y(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),G(e)?Uo(e):eo(e.kind,e.id),qo(e.kind,e.file,t)}function Xh(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return Br(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(y(e,{unanswered:[]}),o)return y(e,{version:t,saved:void 0,theirs:void 0});let i=G(e)||e.theirs?void 0:we(n);i?kT(e,i,t):ng(e,{version:t,text:n})}function kT(e,t,n){ye("giving_way",{file:e}),y(e,{set_aside:e.now,is_taken:!0,now:t}),Br(e,t,n),D(`${e.file} was changed outside this page, and stands here as it is now.`),ye("gave_way",{file:e})}function eg(e,{version:t,text:n}){let o=we(n);!o||e.theirs||G(e)||(ye("giving_way",{file:e}),y(e,{now:o}),Br(e,o,t),ye("gave_way",{file:e}))}var tg=e=>y(e,{set_aside:void 0,is_taken:void 0});function ng(e,{version:t,text:n}){y(e,{theirs:{version:t,text:n}}),Uo(e),D(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),ye("conflict",{file:e})}function og(e){if(!e.theirs)return;let t=we(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return y(e,{failed:n})}ye("giving_way",{file:e}),y(e,{set_aside:e.now,now:t}),Br(e,t,e.theirs.version),ye("gave_way",{file:e})}function ig(e){e.theirs&&(y(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Uo(e),ye("unwritten",{file:e}))}var Ko=({theirs:e})=>e?.text===null;function rg(e){Ko(e)&&(eo(e.kind,e.id),y(e,{saved:e.now,theirs:void 0,failed:void 0}),D(`${e.file} stays deleted.`),ye("left_deleted",{file:e}))}function sg(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;f({typed:void 0}),Ee(e,t),y(e,{set_aside:o?void 0:n})}var ag=e=>(e.theirs??e).version;function lg(e,t){y(e,{id:t,file:t}),ye("renamed",{file:e,renamed:n=>n})}async function dg(e){let{version:t,text:n}=await Ke(e.file),o=we(n);if(!o||e.theirs||t===e.version)return;let i=_u(e.now,o);if(G(e))return y(e,{version:t,now:i(e.now),saved:o});y(e,{version:t,now:o,saved:o}),ye("renamed",{file:e,renamed:i})}var ug=e=>e.shipped||!e.file?[]:[[e.file,ag(e)]];async function Au(e,t,n,o){let i=e.file,r=()=>ag(e)===t&&e.file===i;if(!r()||(await Su(e),!r()))return!1;o(),await Du();let l=await xT(i,n);return await Su(e),r()&&(Xh(e,l),G(e)&&!e.theirs&&ye("unwritten",{file:e})),!0}async function xT(e,t){let n=await t(e);return n===null?{version:n,text:null}:Ke(e)}var Du=()=>new Promise(e=>setTimeout(e,$T));var TT=400,RT=2e3,Ou=new WeakMap;function pg(e,t){clearTimeout(Ou.get(e)),Ou.set(e,window.setTimeout(()=>{pn(e)},t))}var no=(e=a.run)=>pg(e,TT),ST=e=>e===a.run||e===a.order?.open;async function pn(e=a.run){clearTimeout(Ou.get(e));try{await cn(e),G(e)&&!e.theirs&&ST(e)&&no(e)}catch(t){if(!(t instanceof w))throw t;t.may_pass&&pg(e,RT)}}async function ht(){for(let e of[a.run,a.order?.open])e?.file&&G(e)&&await pn(e)}var cg=Promise.resolve(),Pu=0;function rt(){if(!Pu&&!AT().length)return;++Pu;let e=cg.then(DT).finally(()=>--Pu);return cg=e.catch(()=>{}),e}var AT=()=>[...he.map(e=>a.formulas[e]),...Ae.map(e=>a.beside[e])].filter(e=>e!==void 0&&G(e)&&!e.theirs);async function DT(){for(let e of he){let t=a.formulas[e];!t||!G(t)||t.theirs||(t.shipped&&e!=="apart"&&await to(a.run),await cn(t))}for(let e of Ae){let t=a.beside[e];t&&G(t)&&!t.theirs&&await cn(t)}}var zt=e=>At(a.run.file,e);function st(e,t){let n=zt(e);return t?.some(o=>o.file===n)?n:e}function mg(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=st(String(n?.mould??""),a.files?.moulds);return{file:vi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...PT(t)}}}function PT(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}function Ne(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}var xa=e=>e.charAt(0).toUpperCase()+e.slice(1);var gt=({lines:e})=>Array.isArray(e)?e:[];function mn(e){let t=gt(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}function Ti(e){let t=gt(e).flatMap(({together:n})=>n??[]);return[...new Set(t.filter((n,o)=>t.indexOf(n)!==o))]}var Pt=new Map,Cr=new Set,OT={changed:{},unreadable:[]},fn=()=>new Set([...he.flatMap(e=>a.formulas[e]??[]),...Ae.flatMap(e=>a.beside[e]??[])]);function Ri(){let e=MT(),t=new Set([...fn()].map(({file:o})=>o));for(let o of Pt.keys())!e.has(o)&&!t.has(o)&&Pt.delete(o);for(let o of Cr)e.has(o)||Cr.delete(o);let n=[...e].filter(o=>!Pt.has(o));return n.length?FT(n):void 0}async function FT(e){for(let[t,n]of await fg(e))Pt.has(t)||Pt.set(t,n)}async function fg(e){let t=e.filter(o=>!Cr.has(o)),n=t.length?await Lo(new Map(t.map(o=>[o,null]))):OT;return Bu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Mu=async e=>(await fg([e])).get(e)??null,Lu=()=>new Map([...Pt].filter(([e])=>!Cr.has(e)));function MT(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(zt(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(zt("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of fn()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Le(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of LT())e.add(o);for(let o of Ae)e.delete(a.beside[o]?.file??"");return e}function LT(){let{open:e}=a.order??{},t=new Set(e?gt(e.now).map(({run:p})=>At(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},u=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of u)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(At(e.file,"studio.json")),t.delete(a.run.file),t}function hg(e,{changed:t}){let n=Object.keys(t).filter(o=>Pt.has(o)&&Pt.get(o)===e.get(o));for(let o of n)Pt.set(o,t[o]);return n}var Bu=e=>e.forEach(t=>Cr.add(t));function gg(){return[...fn()].flatMap(({file:e,version:t})=>{let n=Pt.get(e)??t;return Pt.delete(e),n===t?[]:[e]})}var _g=0,Jo=()=>_g;function Cu(e){++_g;for(let{file:t}of fn())e.includes(t)&&Fu.add(t);f({is_old:!0,changed_beside:$g(a.changed_beside,e)})}var Fu=new Set,$g=(e,t)=>[...new Set([...e,...t])];function bg(){if(!a.changed_beside.length)return;let e=a.changed_beside.filter(t=>!Fu.has(t)&&!Kh(t,Pt.get(t)??null));Fu.clear(),f({changed_beside:[]}),e.length&&(f({taken_in:{files:$g(a.taken_in?.files??[],e),since:Date.now()}}),D(Wu()))}function Wu(){let{files:e=[]}=a.taken_in??{};if(!e.length)return"";let[t,n,o]=e.length===1?["was","it","it is"]:["were","them","they are"];return`${Ne(e)} ${t} changed outside this page: the figures are of ${n} as ${o} now.`}var BT=5e3;function wg(){a.taken_in&&Date.now()-a.taken_in.since>BT&&f({taken_in:void 0})}var CT=1e3,WT=450,Ta=!1,Vo=!1,Iu=0;function se(){f({is_old:!0}),Ta?Vo=!0:Si()}async function Si(){if(Ta){Vo=!0;return}Ta=!0,yg(!1);try{do Vo=!1,await IT();while(Vo)}finally{Ta=!1,yg(!0)}}async function kg(){let{run:e}=a,t={file:e.file,run:e.now},n=await nh(t)?.catch(()=>{});!n||e!==a.run||a.plan||Jh()||(f({plan:n,planned:t}),Tu(n))}var yg=e=>{document.documentElement.dataset.settled=String(e)};function vg(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function IT(){let e=vg();try{let t=rt();t&&await t;let n=Ri();n&&await n,e=vg();let{apart:o}=a.formulas;if(Bn(o?"apart":"run"))return f({is_old:!0});let i=Jo(),r=o?mg(o.file):{file:a.run.file,run:a.run.now},l=await na(r);if(window.clearTimeout(Iu),!e())return void(Vo=!0);f({plan:l,planned:r,complaint:void 0}),Tu(l);let u=i===Jo();f({is_old:Vo||!u}),u&&bg()}catch(t){if(!(t instanceof w))throw t;if(!e())return void(Vo=!0);ET(t)}}function ET(e){f({is_old:!0}),window.clearTimeout(Iu);let t=()=>{f({complaint:e.complaint}),Uh(e.complaint)};a.complaint||!a.plan?t():Iu=window.setTimeout(t,WT),e.may_pass&&window.setTimeout(se,CT)}var xg=2e3,_t=e=>f({bench:{...a.bench,...e}}),NT=()=>_t({acts:ft()});addEventListener("storage",({key:e})=>{e===xi()&&NT()});function Ra(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:ft()}}),Cn().then(ju))}function Tg(e){let{file:t}=a.run;jh(e,t),a.bench.run===e&&_t({run:t,acts:ft()}),a.bench.run===t&&Cn()}function Rg(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var Wr=0;async function Cn(){let{run:e}=a.bench,t=Wr;try{let n=await Ah(e);if(e!==a.bench.run)return;if(t!==Wr)return await Cn();Sg(n)}catch(n){if(!(n instanceof w))throw n;if(e!==a.bench.run)return;_t({failed:B(n.complaint)}),Ag(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Cn(),xg)}}var Sg=({batches:e,version:t,complaints:n=[]})=>_t({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Ag=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),oo=e=>a.bench.batches.find(t=>t.batch===e),Nu=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),io=e=>Nu(e).length>0;function ro(e,t){let n=Nu(e).find(i=>i.key===t),o=oo(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Qo(e){let t=Nu(e).find(n=>n.reading!==void 0);return(t?t.reading:oo(e)?.weigh_cup)??""}function Dg(e,t,n){let{run:o}=a.bench,r=oo(e)!==void 0||!a.planned?void 0:re(a.planned.run);Nh({run:o,batch:e,seen:t,text:r,...n}),_t({acts:ft(),chosen:e,told:void 0}),ju()}var Pg=(e,t,n,o)=>Dg(e,t,{key:n,done:o}),Og=(e,t,n)=>Dg(e,t,{reading:n||null}),Eu=!1;async function ju(){if(!Eu){Eu=!0;try{await navigator.locks.request(xi(),jT)}finally{Eu=!1}ft().length&&setTimeout(()=>{ju()},xg)}}async function jT(){for(let e=vu();e;e=vu())if(!await HT(e))return}async function HT(e){let{id:t}=e;try{let n=await qT(e);return++Wr,$a(o=>o.id===t),UT(n,e.run),!0}catch(n){if(!(n instanceof w))throw n;return Ag(n)?(_t({unsent:B(n.complaint)}),!1):(await zT(e,n),!0)}}function qT({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let u={run:e,text:t,batch:n,seen:o};return i!==void 0?Dh({...u,key:i,done:r??!1}):Ph({...u,reading:l??null})}function UT(e,t){let n=ft();if(t!==a.bench.run)return _t({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);_t({acts:n,batches:i,unsent:void 0})}async function zT(e,{complaint:t}){++Wr,$a(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${B(t)}.`;_t({acts:ft(),unsent:void 0,told:{batch:e.batch,words:n}}),D(n),se(),await Cn()}async function Ir(e){let{run:t}=a.bench;await Fg(e,async()=>{let n=await Oh(t,e);return $a(o=>o.run===t&&o.batch===e),n})}var Hu=e=>Fg(e,()=>Fh(a.bench.run,e));async function Fg(e,t){let{run:n}=a.bench;try{let o=await t();if(++Wr,n!==a.bench.run)return;Sg(o),_t({acts:ft(),told:void 0,chosen:e})}catch(o){if(!(o instanceof w))throw o;_t({told:{batch:e,words:B(o.complaint)}})}}var Mg=e=>_t({chosen:e,told:void 0}),Lg=()=>_t({told:void 0});var KT=300,JT=1200,Sa="",Bg=0;function Er(){let e={run:{file:a.run,now:a.run.now}};for(let t of he){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of Ae){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Go(e=""){let t=performance.now();e&&e===Sa&&t-Bg<=JT&&a.past.length||qu(Er()),f({future:[]}),Sa=e,Bg=t}var qu=e=>f({past:[...a.past,e].slice(-KT)});function so(e){qu(Cg(Er(),e,()=>e.saved??{}))}function Cg(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Uu(e,t){let n=o=>o.map(i=>Cg(i,e,t));f({past:n(a.past),future:n(a.future)})}function Nr(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Er()]}),Wg(e,"Undone"))}function zu(){let e=a.future.at(-1);e&&(f({past:[...a.past,Er()],future:a.future.slice(0,-1)}),Wg(e,"Redone"))}function Wg(e,t){Sa="",f({typed:void 0});for(let n of[...Ae,...he,"run"])VT(n,e);D(t)}function VT(e,t){let n=t[e];if(ba(e))return QT(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Ln(e,n.file),n.file.now!==n.now&&Ee(n.file,n.now))}function QT(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&Ee(t.file,t.now)}var Ai=e=>e===a.run||he.some(t=>a.formulas[t]===e)||Ae.some(t=>a.beside[t]===e);qt("giving_way",({file:e})=>{Ai(e)&&(Sa="",qu(Er()),f({typed:void 0}))});for(let e of["copied","renamed"])qt(e,({file:t,renamed:n})=>Uu(t,n));var GT=1200,Ku="",Ig=0;function Di(e,t=""){let n=performance.now(),o=t&&t===Ku&&n-Ig<=GT&&e.past.length;y(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[Ku,Ig]=[t,n]}function Aa(e){let t=e.past.at(-1);t&&(y(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),Eg(e,t,"Undone"))}function Da(e){let t=e.future.at(-1);t&&(y(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),Eg(e,t,"Redone"))}function Eg({open:e},t,n){Ku="",f({typed:void 0}),Ee(e,t),D(n)}function ao(e){return e==="run"?a.run:e==="order"?a.order?.open:ba(e)?a.beside[e]:a.formulas[e]}var YT=e=>ao(e)?.now,g=(e,t)=>$(YT(e),t),O=(e,t)=>String(g(e,t)??"");function te(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function ge(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Ng(e,t){e==="order"&&a.order?Di(a.order,t):Go(t===void 0?"":`${e} ${t}`)}function Z(e,t,n){let o=ao(e);!o||$(o.now,t)===n||(Ng(e,t),Ee(o,M(o.now,t,n)))}function jg(e,t){let n=ao(e);n&&(Ng(e),f({typed:void 0}),Ee(n,t(n.now)))}function Kt(e){Go(),f({typed:void 0});for(let[t,n]of e){let o=ao(t);o&&Ee(o,n(o.now))}}var Vu=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function Pa(e){for(let t of Ae)a.beside[t]===e&&Vu(t,void 0)}async function ZT(e,t){try{return await Ie(e,t)}catch(n){if(!(n instanceof w||n instanceof SyntaxError))throw n;return}}async function lo(e,t,n,o=()=>!0){let i=()=>a.beside[e]?.file===n?a.beside[e]:void 0;if(i())return i();let r=await ZT(t,n);return i()||!o()?i():(Vu(e,r),r&&G(r)&&(so(r),ye("unwritten",{file:r})),r?.theirs&&ye("conflict",{file:r}),r)}var Ju=()=>zt("studio.json");async function Pi(e=!1){let t=Ju(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await lo("studio",Or,t,()=>t===Ju()):Vu("studio",void 0))}async function Oa(){a.run.shipped&&await to(a.run);let e=Ju();await lo("studio",Or,e)||(await XT(e),await lo("studio",Or,e))}async function XT(e){try{Ut(e);let{version:t}=await $i({file:e,version:null,text:re({schema:"brimwright.studio/1"})});Xn(e,t)}catch(t){if(!(t instanceof w)||t.status!==409)throw t}qo(Or,e)}var Hg=(e,t)=>Le(e.file)+t;async function eR(e){try{return we((await Ke(e)).text)!==void 0}catch(t){if(!(t instanceof w))throw t;return!1}}async function Fa(e){let t=a.formulas[e];if(!t)return;t.shipped&&await to(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=Hg(t,n);return lo("own_fats",un,await eR(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Le(l.file)===Le(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Gu(un,Hg(t,"my.fats.json"),i);return Z(e,"/own_fats",mt(r)),lo("own_fats",un,r)}async function Qu(){a.run.shipped&&await to(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return lo("own_tips",Zn,zt(n));let o=Le(a.run.file),i=(a.files?.tips??[]).find(u=>!u.shipped&&Le(u.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Gu(Zn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",mt(l)):Z("run",e,mt(l)),lo("own_tips",Zn,l)}async function jr(e,t){await lo(e===un?"own_fats":"own_tips",e,t)&&f({held_open:t})}function uo(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function Ma(e,t){let n=e===un;await jr(e,await Gu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Gu(e,t,n){let{file:o}=await Dt({kind:e,name:t,text:re(n)});return qo(e,o),o}function qg(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(mt(t));for(let i of he)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,e.file)}var Yo=[],Oi=[],Hr=()=>Yo.at(-1),Zu=()=>Oi.at(-1);function Ca(e){Yo=[...Yo,e],Oi=[],f({list_told:e.words}),D(e.words)}var Ug=Promise.resolve();function Fi(e){let t=Ug.then(e);return Ug=t.catch(()=>{}),t}var Jg=()=>Fi(tR);async function tR(){let e=Hr();e&&(await e.undo(),Yo=Yo.slice(0,-1),Oi=[...Oi,e],f({list_told:""}),D("Undone"),await Ot())}var Vg=()=>Fi(nR);async function nR(){let e=Zu();e&&(await e.redo(),Oi=Oi.slice(0,-1),Yo=[...Yo,e],f({list_told:e.words}),D("Redone"),await Ot())}async function Ot(){let[e,t]=await Promise.all([ta(),Cf()]);f({files:e,removed:t})}var Qg=(e,t)=>Fi(()=>oR(e,t));async function oR(e,t){let{$schema:n,...o}=JSON.parse((await Ke(t.file)).text),i=`${t.name||Zo(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(zo(e,r)):Ht(i,Xu(t.file)),{file:u}=await Dt({kind:e,name:l,text:re(r),from:t.file});await Ot();let c="";return Ca({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await La(u,!0),redo:()=>Ba(u,c)}),u}var Xu=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",Zo=e=>mt(e).slice(0,-Xu(e).length||void 0),Gg=(e,t)=>Le(e)+t+Xu(e),zg=e=>[a.run,a.order?.open,...he.map(t=>a.formulas[t]),...Ae.map(t=>a.beside[t])].find(t=>t?.file===e),Yg=(e,t,n)=>Fi(()=>iR(e,t,n));async function iR(e,t,n){let o={name:t.name,note:t.note,stem:Zo(t.file)};await Yu(e,t.file,n),await Ot();let i=Gg(t.file,n.stem);Ca({words:`Changed ${n.name||i}.`,undo:()=>Yu(e,i,o),redo:()=>Yu(e,t.file,n)})}async function Yu(e,t,{name:n,note:o,stem:i}){let r=zg(t),l=r??await Ie(e,t),u={name:String((e.called&&l.now[e.called])??""),note:String(l.now.note??""),stem:Zo(t)},{note:c,...p}=l.now,m={...p,...o&&{note:o}},_=e.called?M(m,`/${e.called}`,n||void 0):m;if(re(_)!==re(l.now)&&(r&&Ai(r)&&Go(),r===a.order?.open&&a.order&&Di(a.order),Ee(l,_),await cn(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let b=Gg(t,i);if(b===t)return Kg(t,u,{name:n,note:o,stem:i});[t,b].forEach(Ut);let{renamed_in:v}=await Mf(t,b);Eh(e,t,b),Kg(b,u,{name:n,note:o,stem:i}),v.forEach(Ut),r&&lg(r,b);for(let T of v){let V=zg(T);V&&await dg(V)}}function Kg(e,t,n){let o=a.list_open;if(o?.file!==e)return;let i=r=>o[r]===t[r]?n[r]:o[r];y(o,{name:i("name"),note:i("note"),stem:i("stem")})}async function La(e,t){Ut(e);let{removed:n}=await Lf(e,t);a.run.file===e&&ki(),a.order?.open.file===e&&f({order:void 0});let o=Ae.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&Pa(o),n}function Ba(e,t){return Ut(e),Bf(t)}var Zg=(e,t)=>Fi(()=>rR(e,t));async function rR(e,t){let n=await La(e.file,t);await Ot(),Ca({words:`Removed ${e.name||e.file}.`,undo:()=>Ba(e.file,n),redo:async()=>n=await La(e.file,!0)})}var Xg=e=>Fi(()=>sR(e));async function sR({removed:e,file:t,name:n}){await Ba(t,e),await Ot();let o="";Ca({words:`${n||t} is back.`,undo:async()=>o=await La(t,!0),redo:()=>Ba(t,o)})}async function e_({removed:e,file:t,name:n}){f({removed:await Wf(e),list_told:""}),D(`${n||t} is deleted for good.`)}var t_=0;function De(){let e=++t_;return()=>e===t_}function n_(e){let t=$(a.run.now,`/${e}/formula`);return typeof t=="string"&&t?st(t,a.files?.formulas):void 0}async function co(){await Promise.all(["pour","pipe"].map(aR))}async function aR(e){let t=n_(e),n=()=>t!==void 0&&a.formulas[e]?.file===t;if(n()||(Ln(e,o_(t)),t===void 0||n()))return;let o=await lR(t);if(!o||n_(e)!==t||n())return;let i=o_(t);Ln(e,i??o),!i&&(G(o)&&(so(o),ye("unwritten",{file:o})),o.theirs&&ye("conflict",{file:o}))}var o_=e=>he.map(t=>a.formulas[t]).find(t=>t&&t.file===e),ec=new Map;function lR(e){let t=ec.get(e)??Ie(Ho,e).catch(dR);return ec.set(e,t),t.finally(()=>ec.delete(e))}function dR(e){if(!(e instanceof w||e instanceof SyntaxError))throw e}var qr=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Mi(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:u,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(u),i(u)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function r_(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:u,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],v=3*c[p+(_+1)%3],T=u[b+i]-t,V=u[v+i]-t;if(T>0==V>0)continue;let ze=T/(T-V),Mo=[1e3*(u[b]+ze*(u[v]-u[b])),1e3*r*(u[b+o]+ze*(u[v+o]-u[b+o]))];T>0?m.push(Mo):m.unshift(Mo)}m.length===2&&l.push([m[0],m[1]])}return l}function s_(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Ur(e){let t=e.positions,[n,o,i,r,l,u]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),u=Math.max(u,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:s_(r_(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*u,cut_y:-1e3*c}}function a_(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>s_(r_(e,n+r*o,"level"))).reduce((r,l)=>i_(l)>1.001*i_(r)?l:r)}function i_(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function tc(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],u)=>{let[c,p]=i[(u+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var l_=40,uR=2e3,nc=0;async function d_(e){let t=await dn({kind:"glb",gauge:e}),n=Mi(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Li(e){let[t,n]=await Promise.all([ln(e),d_(e)]),o=Ur(n);return{gauge:t,outline:o,above:a_(n,o)}}async function cR(e){let{pockets:t}=await ln(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:l_},(i,r)=>`${(n*(r+1)/l_).toFixed(4)} mm`);return ln({...e,depth:o})}function Jt(){pR()}async function pR(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++nc,n=st(e,a.files?.moulds);try{let[o,i]=await Promise.all([cR({file:n}),d_({file:n})]);t===nc&&f({measured:{mould:n,gauge:o,outline:Ur(i)},measuring_failed:void 0})}catch(o){if(t!==nc)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Jt,uR)}}var zr=({run:e,together:t},n="")=>Pn("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(n)}`+(t===void 0?"":`&together=${encodeURIComponent(t)}`)),oc=e=>Tt("/api/record/begin",e),Wa=e=>Tt("/api/record/note",e);var mR=1e4,rc=2500,sc=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",sc);var Ia=[],Bi=()=>`notes ${a.files?.folder??""}`;function Wn(){try{return[...JSON.parse(localStorage.getItem(Bi())??"[]"),...Ia]}catch{return Ia}}function ac(e){try{e.length?localStorage.setItem(Bi(),JSON.stringify(e)):localStorage.removeItem(Bi()),Ia=[]}catch{Ia=e}}var ic=(e,t)=>e.batch===t.batch&&e.key===t.key,hn=(e,t)=>a.record.acts.filter(n=>ic(n,{batch:e,key:t})).at(-1);function u_(e){let t=Wn(),n=t.filter(i=>ic(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:sc,at:Date.now()};ac([...t.filter(i=>!ic(i,e)||i.was_sent&&!i.refused),o])}var lc=e=>ac(Wn().map(e)),Ea=(e,t)=>lc(n=>n.id===e?{...n,...t}:n),Kr=e=>ac(Wn().filter(t=>!e(t))),fR=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=rc),dc=()=>Wn().find(e=>fR(e)&&(e.tab===sc||Date.now()-e.at>mR));var c_=2e3,Pe=e=>f({record:{...a.record,...e}}),Ci=()=>Pe({acts:Wn()});addEventListener("storage",({key:e})=>{e===Bi()&&Ci()});function mo(){a.run.file&&Vr({run:a.run.file})}function Vr({run:e,together:t}){Na({run:e,together:t})||(f({record:{run:e,together:t,batches:[],acts:Wn(),chosen:hR({run:e,together:t})}}),po().then(Jr))}var cc=({run:e,together:t})=>t===void 0?e:`${e}#${t}`,Na=e=>cc(e)===cc(a.record);function p_(e){a.record.run===e&&(Pe({run:a.run.file}),po())}var m_=e=>`record ${cc(e)}`,hR=e=>sessionStorage.getItem(m_(e))??void 0,f_=()=>a.record.run===a.run.file?a.record.version:void 0,h_=()=>{let{run:e,together:t,version:n}=a.record;return t!==void 0&&n!==void 0&&a.view==="order"?{run:e,record:n}:void 0},pc=0;async function po(){let{run:e,together:t,chosen:n}=a.record,o={run:e,together:t},i=pc;try{let r=await zr(o,n);if(!Na(o))return;if(i!==pc||n!==a.record.chosen)return await po();let{batches:l,run_batches:u}=r.record,c=r.poured_by??void 0;Pe({batches:l,of:u??a.record.of,version:r.version,poured_by:c,failed:void 0})}catch(r){if(!(r instanceof w))throw r;if(!Na(o))return;Pe({failed:B(r.complaint)}),g_(r)&&setTimeout(()=>a.record.failed!==void 0&&void po(),c_)}}var g_=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function ja({record:e},t){if(++pc,!Na(t))return;let n=new Set(e.batches.map(({begun:u})=>u.id)),o=u=>n.has(u.begun.id),i=u=>e.batches.find(({begun:c})=>c.id===u.begun.id)??u,r=e.batches.filter(({begun:u})=>!a.record.batches.some(c=>c.begun.id===u.id)),l=[...a.record.batches.map(u=>o(u)?i(u):u),...r];Pe({batches:l,of:e.run_batches??a.record.of})}function Wi(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}var Ha=(e,t)=>sessionStorage.setItem(m_(e),t);function gn(e){Ha(a.record,e),Pe({chosen:e}),po()}var Vt=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),qa=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function Ua({blanks:e,cured:t,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],r=i&&t?.find(({on:l})=>l===i);return i?r?qa(r):"":[...e??[],...n??[]].find(l=>l.key===o)?.noted??""}function mc(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=Ua(e,t),u=hn(e.begun.id,t);if(o===l&&!r&&(!u||!u.was_sent&&u.seen===l))return u&&Kr(({id:_})=>_===u.id),Ci();if(u?.value===o&&!u.lacks==!r&&(u.refused??!u.is_typed))return;let{run:p,together:m}=a.record;u_({run:p,together:m,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),Ci(),i?Jr():setTimeout(()=>{Jr()},rc+50)}var fo=(e,t,n)=>mc(e,{key:t,text:n,value:n,is_left:!0});function __(e){let{refused:t,value:n}=e;if(!t)return;let{answers:o={confirmed:n}}=t,i=(l=[],u)=>u===void 0?l:[...l,u],r=t.is_asked?{confirmed:i(e.confirmed,o.confirmed),beyond:i(e.beyond,o.beyond)}:{seen:t.noted??e.seen};Ea(e.id,{...r,refused:void 0}),Ci(),Jr()}function $_(e){Kr(({id:t})=>t===e.id),Ci()}var uc=!1;async function Jr(){if(!uc){uc=!0;try{await navigator.locks.request(Bi(),gR)}finally{uc=!1}Wn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{Jr()},c_)}}async function gR(){for(let e=dc();e;e=dc())if(!await $R(e))return}function _R({batch:e,run:t,together:n}){let{record:o}=a;return o.batches.some(({begun:r})=>r.id===e)?{run:o.run,together:o.together}:{run:t,together:n}}async function $R(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l,beyond:u}=e,c=_R(e);Ea(t,{was_sent:!0});try{let p=await Wa({...c,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l,"beyond-stock":u});return Kr(m=>m.id===t),bR(e,p),ja(p,c),Pe({acts:Wn(),unsent:void 0}),!0}catch(p){if(!(p instanceof w))throw p;return g_(p)?(Pe({unsent:B(p.complaint)}),!1):(await wR(e,p),!0)}}function bR({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);lc(i=>i.batch!==e?i:i.key===t?o?{...i,seen:Ua(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function wR({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,u=l===!0?"":l,c=o?r:B(n);u===t?Kr(p=>p.id===e):Ea(e,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:u,...yR(i)}}),Ci(),await po()}function yR(e=[]){let t=e[0]?.confirmed,n=e[0]?.["beyond-stock"];return t===void 0&&n===void 0?{}:{answers:{confirmed:t,beyond:n},is_lye:t===vR}}var vR="lye-heavy",za=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function Ka(e,t){if(!e||!t)return;let n=e.blanks?e:await kR(e.begun.id),o=n?.blanks?.filter(fc)??[];n&&o.length===1&&fo(n,o[0].key,t)}async function kR(e){try{return(await zr(a.record,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof w))throw t;return}}var fc=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var b_=()=>a.view==="order",hc=()=>b_()?a.recorded:void 0;function Ja(){if(!b_()||!a.order)return[];let{file:e,now:t}=a.order.open,n=[e,...gt(t).flatMap(({run:o})=>o?At(e,o):[])];return n.filter((o,i)=>n.findIndex(r=>Le(r)===Le(o))===i)}var gc=e=>f({recorded:e});async function Va(){if(a.recorded!==void 0)return;let{stock:e}=await Lo(new Map,{stock:"",beside:Ja()});e!==void 0&&a.recorded===void 0&&gc(e)}var w_=()=>Pn("GET","/api/stock?names"),y_=e=>Tt("/api/stock/act",e),Qa=e=>Pn("GET",`/api/trail?of=${encodeURIComponent(e)}`);var xR=2e3,In=e=>f({stock:{...a.stock,...e}}),v_=()=>a.view==="shelf"||a.view==="trail",_c=()=>v_()?a.stock.version:void 0,TR=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);async function ho(){try{let{version:t,stock:n}=await w_();In({version:t,list:n,failed:void 0})}catch(t){if(!(t instanceof w))throw t;In({failed:B(t.complaint)}),TR(t)&&setTimeout(()=>v_()&&a.stock.failed!==void 0&&void ho(),xR)}let{trail:e}=a.stock;a.view==="trail"&&e&&await k_(e.of)}function Be(e,t){let n=a.stock.trail?.of===e;f({view:"trail",stock:{...a.stock,trail:{...n&&a.stock.trail,of:e,order:t}}}),a.stock.version===void 0?ho():k_(e)}async function k_(e){let t=n=>{let o=a.stock.trail;o?.of===e&&In({trail:{of:e,order:o.order,...n}})};try{let{version:n,trail:o}=await Qa(e);t({trail:o}),In({version:n})}catch(n){if(!(n instanceof w))throw n;let{problem:o,choices:i=[]}=n.complaint,r=i.flatMap(({what:l})=>l??[]);t(r.length?{complaint:`${o}: which is meant?`,choices:r}:{complaint:B(n.complaint)})}}var x_=()=>`shelf ${a.files?.folder??""}`;function $c(e){sessionStorage.setItem(x_(),JSON.stringify(e)),In({forms:e})}function T_(){try{In({forms:JSON.parse(sessionStorage.getItem(x_())??"[]")})}catch{In({forms:[]})}}var bc=(e,t)=>e.kind===t.kind&&e.of===t.of,En=e=>a.stock.forms.find(t=>bc(t,e));function wc(e){if(En(e))return;let t={on:RR(),...e.typed};$c([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...e,typed:t}]),In({told:void 0})}var yc=e=>$c(a.stock.forms.filter(t=>!bc(t,e))),Ii=(e,t)=>$c(a.stock.forms.map(n=>bc(n,e)?{...n,...t}:n)),Qt=(e,t)=>Ii(e,{...t,typed:{...e.typed,...t.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Xo(e,t,n){Ii(e,{complaint:{file:"",field:t,problem:n,remedy:"",line:n}}),D(n)}async function Ga(e,t){let n=En(e);if(!n||n.is_asking)return!1;Ii(e,{is_asking:!0,complaint:void 0});try{let{stock:o}=await y_({...t,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return yc(e),In({told:{of:e.of,sentences:i}}),D(i.join(" ")),await ho(),!0}catch(o){if(!(o instanceof w))throw o;return Ii(e,{is_asking:!1,complaint:o.complaint}),D(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await ho(),!1}}function R_(e,t){Ii(e,{confirmed:[...e.confirmed,t],complaint:void 0})}var S_=(e,t)=>Ii(e,{seen:t,complaint:void 0});function RR(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var Qr=()=>f({own_fats:{}});function go(e){let t=Gr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Gr(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Le(t.file)+n,n].includes(o.file))return D_(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(A_(i,"waiting"),SR(n,t.file).then(l=>A_(i,l)),"waiting")}var A_=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function SR(e,t){for(let n of new Set([Le(t)+e,e])){let o=D_(await AR(n));if(o)return o}return"none"}var D_=e=>Array.isArray(e?.fats)?e.fats.map(DR):void 0;async function AR(e){try{return we((await Ke(e)).text)}catch{return}}var DR=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:PR(n)});function PR(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Ei=[],Yr;function Ya(){Ei.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Ei.push(e);Yr===void 0&&P_()}function vc(e){let t=a.own_moulds[e];return!t&&e!==Yr&&!Ei.includes(e)&&Ei.push(e),Yr===void 0&&Ei.length&&P_(),t}async function P_(){for(;(Yr=Ei.shift())!==void 0;){let e=Yr,t=await FR(e);t&&f({own_moulds:{...a.own_moulds,[e]:t}})}}var OR=2e3;async function FR(e){try{let{pockets:t}=await ln({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof w))throw t;if(t.may_pass){window.setTimeout(()=>vc(e),OR);return}let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var M_=()=>f({own_tips:{}}),kc=!1;function Zr(){return!a.tips&&!kc&&(kc=!0,Kf().then(e=>f({tips:e}),L_).finally(()=>kc=!1)),a.tips??[]}function xc(e){let t=zt(e),n=a.beside.own_tips;if(n?.file===t)return F_(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(O_(t,[]),Ke(t).then(({text:i})=>O_(t,F_(we(i))),L_),[])}var O_=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function F_(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function L_(e){if(!(e instanceof w))throw e}var Za=300,MR=5e3,E_=2e3,LR=500,B_=!1,Xr=new AbortController,Xa=()=>Xr.abort(),N_=()=>document.visibilityState==="hidden";function el(){if(B_)return;B_=!0;let e=async()=>{Xr=new AbortController;let t=await BR(Xr).then(()=>N_()?MR:Za,()=>Xr.signal.aborted?Za:E_);await C_(Za),await C_(t-Za,Xr.signal),e()};e()}var C_=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),j_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...fn()],Tc=()=>{let e=Rg(),t=h_();return t?{version:e?.version,...t}:e&&{...e,record:f_()}},H_=()=>_c()??hc(),q_=()=>({bench:Tc(),stock:H_(),beside:Ja()}),U_=()=>new Map(j_().flatMap(ug)),W_=()=>JSON.stringify([[...U_().keys()],[...Lu().keys()],Tc()?.run??null,Tc()?.record??null,H_()??null,Ja()]);async function BR(e){let t=gg();t.length&&await I_(t);let[n,o]=[U_(),Lu()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!N_()?await CR(i,e):await Lo(i,q_());l.bench!==void 0&&await Cn(),l.record!==void 0&&await po(),l.stock!==void 0&&await WR(l.stock),Bu(l.unreadable),await IR(n,l);let u=hg(o,r?l:await Lo(o));u.length&&await I_(u)}async function CR(e,t){let[n,o]=[W_(),Date.now()],i=window.setInterval(()=>{(W_()!==n||Date.now()-o>If+E_)&&t.abort()},LR);try{return await Ef(e,q_(),t.signal)}finally{window.clearInterval(i)}}async function WR(e){hc()!==void 0&&gc(e),_c()!==void 0&&await ho()}async function IR(e,{changed:t}){let n=fn();for(let o of j_()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await ER(o,i):await Au(o,i,Mu,()=>{}))}}async function ER(e,t){let n=!1,o=()=>{n=!0,Cu([e.file])};try{await Au(e,t,Mu,o)&&Qr()}finally{n&&se()}}async function I_(e){Cu(e);try{await Du(),Qr(),M_(),f({measured:void 0}),Jt(),Ya(),await Promise.all([co(),Pi(!0)])}finally{se()}}async function K_(e){let t=await eh();f({files:t});let n=Xf(t,e.run);try{await tl(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Sc(){try{let[e,t]=await Promise.all([Uf(),zf()]);f({fats:e,catalogue:t})}catch(e){if(!(e instanceof w))throw e;e.may_pass?window.setTimeout(()=>{Sc()},NR):f({fault:e.message})}}var NR=2e3,jR=()=>new Promise(e=>setTimeout(e,400)),Rc={};function Nn(e,t){return De(),tl(e,t)}async function tl(e,t="weigh"){if(!e)return f({view:"runs"});let n=Rc={name:e},o=a.view;a.run.file&&G(a.run)&&await pn();let i=await Ie(No,e);if(Rc!==n||(ki(i),Ra(),await Promise.race([kg(),jR()]),a.run!==i))return;a.view===o&&Rc===n&&f({view:t}),localStorage.setItem("run",i.file),G(i)&&(so(i),no());let r=Si().finally(Jt);await Promise.all([r,co(),Pi()]),el()}var z_=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function nl(e){let t=De(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(i.cut={bar:{thickness:e.slice},...z_()?{}:{kerf:""}}),z_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:r}=await Dt({kind:No,name:Ht(e.name,".run.json"),text:re(i)});t()&&(ue("set-up pour"),e.slice&&ue("set-up cut"),await Nn(r,"set-up"))}var HR="examples/plain_bars.run.json";function at(e){Qr();let t=On(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function es(e){let t=De(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===e);if(n)return at(n);a.run.file||await tl(HR,"reading");let o=await Ie(Ho,e);t()&&qR(o)}function qR(e){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),Ln("apart",e),G(e)&&so(e),f({plan:void 0,complaint:void 0}),at("apart"),Si()}async function UR(){let e=a.formulas.apart!==void 0;return await ol()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function ol(){return a.formulas.apart?await zR()?(Si(),!0):!1:!0}async function zR(){try{await rt()}catch(t){if(!(t instanceof w))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return D("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Ln("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function J_(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&Ln(o,void 0);n&&await ol(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function Ac(e){let{file:t}=a.formulas.apart;await UR()&&Z("run",`/${e}/formula`,t)}var KR=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),V_=e=>G_(KR(e));async function Q_(e,t){let{$schema:n,...o}=JSON.parse((await Ke(e)).text);await G_({...o,name:t},e)}async function G_(e,t){let n=De(),o=Ht(String(e.name),".formula.json"),{file:i}=await Dt({kind:Ho,name:o,text:re(e),from:t});n()&&await es(i)}var JR=30,VR=2e3,Y_=0,Dc=!1,Pc=!1;function Oc(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),il()}var _n=()=>f({mould:void 0,mesh:void 0}),Ni=(e,t,n)=>Oc(zo(it,e),t,n);async function Z_(e,t){let n=De(),o=await Ie(it,e,t?crypto.randomUUID():e);if(!n())return!1;let i=String(o.now.name??e);return t&&y(o,{now:{...o.now,name:""}}),Oc(o,"form",t?`A copy of ${i}`:`Change ${i}`),!0}async function X_({id:e,file:t,text:n}){let o=De(),i=t?await Ie(it,t,e):zo(it,JSON.parse(n),e);return o()?(Oc(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var ie=()=>a.mould,K=()=>ie().open.now;function Ce(e,t){Di(ie(),e),Ee(ie().open,M(K(),e,t))}var e$=()=>Aa(ie()),t$=()=>Da(ie()),QR=["name","note","owned","unmould_after"];function Fc(e){let t=K(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!QR.includes(l)))&&y(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&il()}function il(){clearTimeout(Y_),Y_=window.setTimeout(()=>{GR()},JR)}async function GR(){if(Dc)return void(Pc=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!jt(t,"shape")&&!jt(t,"mesh"))){if(Pr(t).length)return y(e,{complaint:void 0});Dc=!0;try{let n=it.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Li(o);e.open.now===t&&y(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;e.open.now===t&&e===a.mould&&Mc(n),n.may_pass&&window.setTimeout(il,VR)}finally{Dc=!1,Pc&&il(),Pc=!1}}}function Mc(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;y(ie(),{complaint:{field:ga(K(),t),line:l,keep:i&&{...i,at:ga(K(),i.at)},about:r===void 0?void 0:ga(K(),`${t}/${r}`)}})}var n$={};async function Gt(e){De();let t=n$={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&G(a.order.open)&&await pn(a.order.open);let o=await Ie(jo,e);if(n$!==t)return;let i=G(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),G(o)&&no(o)}a.view===n&&f({view:"order",typed:void 0}),el()}function o$(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function i$(e){let t=De(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},o=jo.new_name(zo(jo,n)),{file:i}=await Dt({kind:jo,name:o,text:re(n)});t()&&await Gt(i)}var pe=()=>a.order,r$=()=>Aa(pe()),s$=()=>Da(pe());var rl=e=>Object.values(a.formulas).includes(e),ji=e=>Object.values(a.beside).includes(e),a$=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function YR(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Jt(),a$(e)!==a$(t)&&co(),se(),no()}var ZR=se;function XR(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(mt(t))?M(r,o,e.file):r;Uu(a.run,i),i(a.run.now)!==a.run.now&&Ee(a.run,i(a.run.now))}}async function e0(e){e===a.run?(ki(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?_n():e===a.order?.open?o$():ji(e)?Pa(e):await J_(e),await Ot(),a.run.file&&se()}function l$(){qt("edited",({file:e,before:t})=>{wg(),e===a.run?YR(t,e.now):rl(e)||ji(e)?ZR():e===a.mould?.open?Fc(t):e===a.order?.open&&no(e)}),qt("gave_way",({file:e})=>{if(f({typed:void 0}),e===a.mould?.open)return Fc();e!==a.order?.open&&(e===a.run&&(Jt(),co().then(se)),se())}),qt("left_deleted",({file:e})=>{e0(e)}),qt("unwritten",({file:e})=>{e===a.run||e===a.order?.open?pn(e):(rl(e)||ji(e))&&se()}),qt("conflict",({file:e})=>{(rl(e)||ji(e))&&f({is_old:!0})}),qt("renamed",({file:e})=>{ji(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),Jt(),co()),se()}),qt("copied",({file:e,from:t})=>{rl(e)&&XR(e,t),ji(e)&&qg(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(Tg(t),p_(t),localStorage.setItem("run",e.file),Pi().then(se))})}var $t=s`<span aria-hidden="true">⚠</span> Danger`;function ts(e,t="",n){let o=_o(e,n);return o.length?s`<div class="dangers" id=${t||d}>
    ${o.map(i=>s`<p class="danger"><strong>${$t}</strong> ${i}</p>`)}
  </div>`:d}function _o(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function d$(){let e=ct(a.view)||a.view==="order"||a.view==="trail"||Mr()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var u$=()=>d$().length>0;function c$(){let e=d$(),t=o0(),n=t||ct(a.view)?"":Wu();return!e.length&&!t&&!n?d:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:o,text:i})=>s`<p class="danger"><strong>${$t}</strong> ${o}${i}</p>`)}
          </div>`:d}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${t0()?s`<button type="button" @click=${n0}>To the question</button>`:d}
          </div>`:d}
    ${n?s`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:d}
  </section>`}var t0=()=>Bn(Mr())!==void 0&&!ct(a.view);function n0(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function o0(){if(!a.run.file||a.view==="reading")return"";let e=Bn(Mr());if(e&&Ko(e))return`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(e)return`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let t=a.changed_beside;return a.is_old&&t.length?`${Ne(t)} ${t.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var jn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},sl=e=>(...t)=>({_$litDirective$:e,values:t}),Hi=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:i0}=yh,p$=e=>e;var f$=e=>e.strings===void 0,m$=()=>document.createComment(""),qi=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(m$(),i),l=o.insertBefore(m$(),i);n=new i0(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,u=l!==e;if(u){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||u){let c=n._$AA;for(;c!==r;){let p=p$(c).nextSibling;p$(o).insertBefore(c,i),c=p}}}return n},$o=(e,t,n=e)=>(e._$AI(t,n),e),r0={},al=(e,t=r0)=>e._$AH=t,h$=e=>e._$AH,ll=e=>{e._$AR(),e._$AA.remove()};var P=sl(class extends Hi{constructor(e){if(super(e),e.type!==jn.PROPERTY&&e.type!==jn.ATTRIBUTE&&e.type!==jn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!f$(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Je||t===d)return t;let n=e.element,o=e.name;if(e.type===jn.PROPERTY){if(t===n[o])return Je}else if(e.type===jn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Je}else if(e.type===jn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Je;return al(e),t}});var tt=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Hn(e,t){let n=tt(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>tt(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function dl(e,t){let n=tt(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var Ui=28.349523125,b$=25.4,s0=29.5735295625;function Ve(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function S(e,t){return w$(Ve(e,t))}var w$=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function lt(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Ve(e,t)} %`:Lc(e)?"just below 0 %":"0.0 %"}var Lc=e=>e<0||Object.is(e,-0),y$=e=>Math.abs(e-Math.round(e))<1e-6;function g$(e){return e?[0,1,2,3].find(t=>y$(e*10**t))??3:0}function _$(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function a0(e){return[0,1,2].find(t=>e.every(n=>y$(n*10**t)))??3}function os(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function ae(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-a0([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var v$=.001;function ns(e,t,n,o,i=1e-9){let r=10**n;return Ve(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var $$=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function l0(e){if(!$$.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return $$.find(t=>Math.abs(t*Ui-e)<.6*v$)}function X(e,t,n="nearest"){let o=t.scale_step_g||.1,i=l0(o),r=Math.min(.6*v$,o/2),l=i?ns(t.g,1,_$(o),n):ns(t.g,1,g$(o),n,r),u=i?ns(t.g,Ui,g$(i),n,r):ns(t.g,Ui,_$(o/Ui),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??u} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:os(e,c,p)}var H=(e,t,n=1,o="nearest")=>X(e,{g:t,scale_step_g:10**-n},o);function Ft(e,{g:t=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>w$(ns(t,l,3,"down")),i=16*Ui,r=t<1e3?`${o(1)} g`:`${o(1e3)} kg`;return x(os(e,r,t<i?`${o(Ui)} oz`:`${o(i)} lb`))}function ve(e,t,n=1){return os(e,`${Ve(t,n)} ml`,`${Ve(t/s0,2)} US fl oz`)}function _e(e,t){return os(e,`${S(t,1)} mm`,d0(t))}function d0(e){let t=Math.round(Math.abs(e)/b$*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Bc=([e])=>e,x=([e,t])=>t?`${e} (${t})`:e;function k$(e,t){return os(e,`${Ve(t,0)} \xB0C`,`${Ve(t*1.8+32,0)} \xB0F`)}function Yt(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??b$;return n*o}function Mt(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Oe=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function N(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function ke(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${N(e)}`}var x$=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),xe=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,N);function ul(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function bo(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function S$(e){let t=Yt(e.round?.radius);if(t)return T$(t,R`<circle class="plain" r=${t} />`);let n=u0(e);if(!n)return d;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?T$(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):d}var T$=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function u0({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return c0(e);if(!Array.isArray(t))return;let n=t.map(o=>[R$(o,"x"),-R$(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function R$(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Yt(n.replace(/^-/,""))??NaN)}function c0({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Yt(t),Yt(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let u=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(u),-c*Math.cos(u)]})}var Cc=!1;function A$(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!Cc&&m0(),{workings:p0(n?.workings,e),complaint:n?.complaint,is_old:o}}function p0(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function m0(){let{plan:e,planned:t}=a;if(!(!e||!t)){Cc=!0;try{let{how:n}=await Nf(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Cc=!1}}}var D$=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,Wc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${D$}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${D$}<path class="measure" d="M20 10h80" />`}};var Ic=e=>`term ${e}`;function qn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Ic(e))?"true":"false"}
    aria-label="What ${Wc[e].name} means"
    @click=${()=>He("open",Ic(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Zt(e){if(!a.open.has(Ic(e)))return d;let{name:t,words:n,drawing:o}=Wc[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:d}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var wo=e=>s`<span class="term">${qn(e)}${Zt(e)}</span>`;function I({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:u}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${u?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>He("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:d}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:d}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${u?s`${qn(u)}${Zt(u)}`:d}
    ${c?s`<div class="sum" id=${p}>${i?cl(i):Ec(o)}</div>`:d}
  </div>`}var ei=(e,t,n)=>I({key:e,label:t,shown:["",""],of:n});function Ec(e){let{workings:t,complaint:n,is_old:o}=A$(e);return t.length?s`<div class=${o?"old":""}>${t.map(cl)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function cl({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:u,value:c,from:p})=>s`<tr>
              <th scope="row">${u}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:d}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:d}`}var ti,is=[],Un=()=>ti!==void 0;function bt(e,t,n,o){if(!ti||ti.some(r=>r.id===n))return;let i=is.flatMap(({part:r})=>r??[]);ti.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:is.flatMap(({fold:r})=>r??[])})}function Lt(e,t){is.push(e);try{return t()}finally{is.pop()}}var P$=()=>{},O$=e=>{P$=e},pl,f0=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function zi(){if(Un())return[];let e=f0();return pl?.of.length===e.length&&e.every((n,o)=>n===pl.of[o])||(pl={of:e,wanted:h0()}),pl.wanted}function h0(){ti=[],is=[];try{return P$(),ti}finally{ti=void 0}}function F$(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function M$(e,t){if(a.has_asked)return!1;let n=zi().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var Y=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function ml(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function Qe(e,t){let n=ml(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return Bt(e)&&!M$(e,n.field)?B(n):void 0}function Fe(e,t){return ml(e)?.field===t?Qe(e,t):void 0}function Bt(e){let t=ml(e),n=ao(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function g0(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function $n(){let e=ml();if(e)for(let t of["run",...he,...Ae])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Qe(t,n)&&document.getElementById(Y(t,n));if(o)return o}}function _0(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=$0(e,n);return o&&Oe(t)?`${t.trim()} ${o}`:t}function $0(e,t){return Mt(g(t,e.at))||e.unit||""}var $e=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:d,Nc=!1;addEventListener("pointerdown",()=>Nc=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Nc=!1,!0);var b0=()=>f({typed:void 0});function ni(e){let{id:t}=e.target,n=()=>{b0(),F$(t)};Nc?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var w0=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,y0=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||d;function h(e){let t=e.of??"run",n=Y(t,e.at),o=g(t,e.at),i=w0(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),u=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);u&&bt(t,e.at,n,e.label);let c=Qe(t,e.at),p=b=>{let v=b.target.value;f({typed:{key:n,text:v}});let T=_0(e,v);Z(t,T===void 0&&e.takes_part?g0(t,e.at):e.at,T)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${jc(s`<label for=${n} data-said=${y0(e,u)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?d:"true"}
      .value=${P(l)}
      @input=${p}
      @blur=${ni}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?d:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||d}
    />
    ${$e(n,c,_)} ${e.term?Zt(e.term):d}
  </div>`}var jc=(e,t)=>t?s`<div class="labelled">${e}${qn(t)}</div>`:e;function nt(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var L=e=>()=>document.getElementById(e),oe=(e,t)=>L(Y(e,t)),Xt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),v0=()=>document.activeElement;function C(e){requestAnimationFrame(()=>nt(e()))}function wt(e,t,n,o=v0){D(t),jg(e,n),C(o)}function q(e,t,n,o,i){wt(e,t,r=>M(r,n,o),i)}var Ct=(e,t,n)=>`${Y(e,t)}-${n}`;function W(e,t){let n=Fe(e,t);return n?s`<p id=${Y(e,t)} class="complaint" tabindex="-1">${n}</p>`:d}var L$=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ce(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${L$(t,n,o)}</div>`}function A({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:u,then:c,hint:p,optional:m,term:_}){let b=i?Ct(e,n,t.replaceAll(/\W+/g,"-")):Y(e,o),v=r===void 0&&!m;v&&bt(e,o,b,t);let T=i?void 0:Fe(e,o),V=ze=>{if(ze===r)return;let Mo=l.find(([Gx])=>Gx===ze)[1];q(e,`${t}: ${Mo}`,n,u(ze),c&&oe(e,c(ze)))};return s`<div class="field asked ${T?"wants":""}">
    ${jc(s`<p class="question" id="${b}-label" data-said=${v?"required":d}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${T||p?`${b}-said`:d}
    >
      ${L$(r,l,V)}
    </div>
    ${$e(b,T,p)} ${_?Zt(_):d}
  </div>`}function Hc(e,t,n,o){let i=Y("run",e),r=Fe("run",e),l=()=>q("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:d}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${$e(i,r)}`}function me({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:u}){let c=Y(t,n),p=Qe(t,n),m=l??O(t,n);!m&&!r&&bt(t,n,c,e);let _=!m||o.some(([T])=>T===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?d:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?d:"true"}
      @change=${T=>{let V=T.target.value;u?u(V):Z(t,n,V||!r?V:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:d}
    >
      ${b.filter(([T])=>T||r||!m).map(([T,V])=>s`<option value=${T} .selected=${P(T===m)}>${V}</option>`)}</select
    >${$e(c,p)}
  </div>`}function Ki(e,t,n=[]){let o=st(O("run",t),n);return me({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ot({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let u=Ct(e,t,"part"),c=Ct(e,t,"add"),p=()=>Lt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>q(e,`${o} added`,t,r,Xt(u))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${u} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>q(e,`${o} removed`,t,void 0,L(c))}
      >
        Remove
      </button>
    </div>
    ${W(e,t)} ${p()}
  </div>`}var B$=(e,t)=>`folded ${e} ${t}`,Ge=(e,t)=>ue(B$(e,t));function F({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=B$(e,t);if(Un())return s`${Lt({fold:l},r)}`;(i||n.some(p=>Qe(e,p)))&&ue(l);let u=a.open.has(l);return s`<details .open=${u}>
    <summary @click=${p=>{p.preventDefault(),He("open",l)}}>${o}</summary>
    ${u?s`<div class="folded">${r()}</div>`:d}
  </details>`}var k=({of:e="run",at:t})=>te(e,t),E=({of:e="run",at:t},n)=>Ct(e,`${t}/${n}`,"item"),fl=({of:e="run",at:t},n,o)=>Ct(e,`${t}/${n}`,o),k0=({of:e="run",at:t})=>Y(e,t);function rs(e,t,n,o){let{of:i="run",at:r,stays:l,and:u=c=>c}=e;wt(i,t,c=>u(M(c,r,n.length||l?n:void 0),n.length),o)}function U(e,t,n){let o=k(e);rs(e,`${n} added`,[...o,t],Xt(E(e,o.length)))}function x0(e,t,n){let o=k(e).filter((l,u)=>u!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);rs(e,`${n} removed`,o,r?L(fl(e,i,"drop")):oe(e.of??"run",e.at))}function T0(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;rs(e,`${o} moved ${l}`,i,L(fl(e,t+n,c)))}function J(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return d;let l=(u,c,p)=>s`<button
      type="button"
      id=${fl(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>T0(e,t,u,n)}
    >
      ${u<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:d}
    ${i?s`<button
            type="button"
            id=${fl(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>x0(e,t,n)}
          >
            ×
          </button>`:d}
  </div>`}function ee(e,t,n){let o=k0(e),i=Fe(e.of??"run",e.at);return s`${$e(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:d} @click=${n}>
      ${t}
    </button>`}var le=()=>a.beside.studio!==void 0,ss=({run:e})=>g("run",e),qc=({studio:e})=>g("studio",e);function as(e){return ss(e)===void 0&&le()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var bn=e=>ss(e)??qc(e),qe=(e,t)=>h({...t,...as(e)}),Uc=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function ls(e,t=""){return e===void 0||Uc(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>ls(o,`${t}/${j(n)}`))}function zn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&Uc($(e,n))&&(e=M(e,n,void 0));return e}var Ji=(e,t)=>t.reduce((n,o)=>zn(M(n,o,void 0),o),e);function W$(e){let t=new Map;return e.flatMap(n=>ls(ss(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return Uc(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function zc(e){le()||await Oa();let t=W$(e);Kt([["studio",n=>t.reduce((o,[,i,r])=>M(o,i,r),n)],["run",n=>Ji(n,t.map(([o])=>o))]]),D("Kept in the studio")}function R0(e){let t=e.flatMap(o=>ls(qc(o)).map(([i,r])=>[o.run+i,r]));Kt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?M(i,r,l):i,o)]]),D("Said in this run only")}function S0(e){let t=e.flatMap(n=>ls(ss(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Kt([["run",n=>Ji(n,t)]]),D("Taken from the studio again")}var C$=e=>ls(e).length>0;function yo(e,t){if(!le())return d;let n=t.some(r=>C$(ss(r))),o=t.some(r=>C$(qc(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&W$(t).length?i("Keep in my studio",()=>{zc(t)}):d}
    ${n&&o?i("As in the studio",()=>S0(t)):d}
    ${!n&&o?i("Otherwise in this run",()=>R0(t)):d}
  </span>`}function Kc(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>st(o,n)===st(e,n))??e}var fe=(e,t)=>Object.keys(g(e,t)??{}),I$=(e,t)=>`${Y(e,t)}-name`;function Vi({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=I$(e,t),u=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",fe(e,t).includes(p))return nt(r(p)());q(e,`${p} added`,`${t}/${j(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&u()}}
      />
    </div>
    <button type="button" @click=${u}>${o}</button>
  </div>`}function ds({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${Y(e,t)}-${fe(e,t).indexOf(n)}-called`;return Vc({id:l,name:n,label:o,taken:fe(e,t),take:u=>{let c=p=>i(us(p,t,n,u),u);r?r(c,u):wt(e,`${n} is called ${u}`,c)}})}var Jc;function Vc({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);Jc=m?{id:e,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===t)&&(i(p),D(`${t} is called ${p}`),C(L(e)))},u=Jc?.id===e?Jc.words:void 0;return s`<div class="field ${u?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${P(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>f({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${u?"true":"false"}
      aria-describedby=${u||r?`${e}-said`:d}
    />
    ${$e(e,u,r)}
  </div>`}function us(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return M(e,t,Object.fromEntries(i))}function oi(e,t,n,o=n){let i=r=>zn(M(r,`${t}/${j(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>wt(e,`${o} removed`,i,L(I$(e,t)))}
    >
      ×
    </button>
  </div>`}var ii="/pipe/beads",tn=`${ii}/tip`,A0={of:"run",at:tn},wn={at:`${ii}/moves`,in_order:!0},Qc="\0own",H$={tip:"",bead_to_opening:"",moves:[]},en=(e,t)=>({name:e,label:t,kind:"length"}),E$={name:"count",label:"How many",kind:"count"},N$=en("circle_radius","Radius of their circle"),Gc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[en("diameter","Diameter"),en("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[en("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},en("start_radius","Radius at the start"),en("end_radius","Radius at the end"),en("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[en("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[E$,N$,en("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[E$,N$,en("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[en("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function q$(e){return s`${P0()} ${Yc()?gl(A0):B0()}
    ${h({label:"Bead \xF7 tip opening",at:`${ii}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(wn).map((t,n)=>H0(t,n,e))}</div>
    ${z0()}`}var Yc=()=>typeof g("run",tn)=="object",Zc=()=>String(g("run",`${ii}/own_tips`)??g("studio","/own_tips")??"");function D0(){let e=Zc(),t=e?xc(e):[];return g("run",`${ii}/own_tips`)===void 0?[...t,...Zr()]:t}function P0(){let e=n=>n===Qc?q("run","a tip of your own",tn,{name:"",round:{radius:""}},F0):Z("run",tn,n),t=D0().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${me({label:"Tip",at:tn,answers:[...t,[Qc,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Yc()?Qc:void 0})}
  ${Yc()?d:F({name:"tips",pointers:[`${ii}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${ii}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var O0=Ct("run",tn,"own"),F0=Xt(O0);async function M0(){let e=g("run",tn);if(!await Qu())return;let t=te("own_tips","/tips"),n=L0(String(e.name).trim()||"My tip",t);Kt([["own_tips",o=>M(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>M(o,tn,n)]]),D(`${n} kept in ${a.beside.own_tips.file}`)}function L0(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...Zr()].some(i=>i.name===o))return o}}function B0(){let e=O("run",tn),t=Zc();if(!e||!t||!xc(t).some(o=>o.name===e))return d;let n=te("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Qu()}}>Change this tip of my own</button>`:gl({of:"own_tips",at:`/tips/${n}`})}var j$=[["round","Round"],["star","Star"],["outline","Another outline"]],hl={x:"",y:""},C0={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[hl,hl,hl]};function gl({of:e,at:t}){let n=j$.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...ge(e,t,n),[r]:C0[r]});return s`<div class="part" id=${Ct(e,t,"own")} role="group" aria-label="My own tip">
    ${W(e,t)} ${W0({of:e,at:t})}
    ${A({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:j$,puts:i})}
    ${o?N0({of:e,at:t},o):d}
    ${F({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>E0({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{M0()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var W0=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):Vc({id:Y(e,`${t}/name`),name:O(e,`${t}/name`),label:"What you call the tip",taken:te("own_tips","/tips").map(({name:n})=>String(n)),take:n=>I0(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function I0(e,t){let n=O("own_tips",`${e}/name`),o="/hand",i=zt(Zc())===a.beside.own_tips?.file,r=i&&g("run",tn)===n,l=i&&g("studio",`${o}/${j(n)}`)!==void 0;Kt([["own_tips",u=>M(u,`${e}/name`,t)],...r?[["run",u=>M(u,tn,t)]]:[],...l?[["studio",u=>us(u,o,n,t)]]:[]])}function E0({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):d}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>q(e,"correction removed",n,void 0,Xt(Ct(e,t,"own")))}
          >
            Leave the correction out
          </button>`:d}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function N0(e,t){if(t==="outline")return j0(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function j0({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${E(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${J(n,i,`corner ${i+1}`)}
        </div>`)}
    ${ee(n,"One more corner",()=>U(n,hl,"corner"))}`}function H0(e,t,n){let o=Gc[String(e.move)],i=`${wn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${E(wn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${J(wn,t,r)}
    </div>
    ${W("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>q0(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${U0(t,n)}
  </div>`}function q0(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function U0(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(wn).length)return d;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return I({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ve(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function z0(){let e=o=>({move:o,...Object.fromEntries(Gc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=Y("run",wn.at),n=Fe("run",wn.at);return k(wn).length||bt("run",wn.at,t,"What the tip does"),s`${$e(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:d}
    >
      ${Object.entries(Gc).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>U(wn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function yn(e,t=()=>{}){if(!e.theirs)return d;let n=Ko(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{ig(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:d}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>rg(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>og(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function vn(e){if(e.theirs||!e.set_aside||Ai(e)&&!e.is_taken)return d;let t=()=>{Ai(e)&&Go(),sg(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>tg(e)}>Close</button>`:d}
    </div>
  </section>`}var _l={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function z$(e,t){let n=Gr(e);if(!Array.isArray(n)||!n.some(u=>u.id===t))return d;let i=te("own_fats","/fats").findIndex(u=>u.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{K0(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return F({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Lt({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>Xc(l))})}async function K0(e,t){await Fa(e),Ge("own_fats",t);let n=te("own_fats","/fats").findIndex(o=>o.id===t);C(L(`f-own_fats-fats-${n}-name`))}var J0=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Xc(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${W("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${A({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:O("own_fats",`${e}/kind`)||void 0,answers:J0,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${V0(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${F({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>Q0(e)})}`}function V0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${A({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function Q0(e){let t=(o,i,r,l)=>{let u=`${e}/${o}`,c=g("own_fats",u)!==void 0,p=()=>q("own_fats",`${i}: ${c?"left out":"added"}`,u,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${W("own_fats",u)}${l()}`:d}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${G0(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var U$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function G0(e){let t=Object.keys(g("own_fats",e)??{}),n=U$.filter(([l])=>!t.includes(l)),o=l=>U$.find(([u])=>u===l)?.[1]??l,i=l=>`${e}/${j(l)}`,r=l=>{let u=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${u?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>q("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${W("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${me({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&q("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function Qi(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:u,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:u,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var z=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,Y0=e=>e.cut?["loaf","loaves"]:["cast","casts"];function nn(e,{pieces:t,casts:n}){let o=e.cut?z(t,"bar"):z(t,"piece");return n===t?o:`${o} from ${z(n,...Y0(e))}`}var Z0=e=>e===1?"once":`${e} times`,ep=e=>e.batches.length>1,Ye=e=>e.pieces.batches>1;function be(e){return Ye(e.whole)?`one batch, ${nn(e.whole,e.batch)}`:""}var K$=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function tp(e,t){return K$(e)?`${nn(e.whole,t)}${t.count>1?`, whipped ${Z0(t.count)}`:""}`:""}function $l(e,t){let n=tp(e,t);return n&&`one whipping: ${n}`}var J$=e=>Ye(e.whole)||K$(e),bl=(e,t)=>`${z(e,"filling")} of ${z(t,"cavity","cavities")}`;var V$=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function wl(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${Ne(t.map(V$))}.</p>`:d}function Gi(e){let t=e?.used_by??[];return t.length<2?d:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ne(t.map(V$))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var cs={of:"own_fats",at:"/fats",least:1},yl={of:"own_tips",at:"/tips",least:1},ri=({of:e,at:t})=>te(e,t);function Q$(e){return Y$(e,cs,"fats",t=>{let n=`/fats/${t}`;return F({of:"own_fats",name:String(ri(cs)[t].id),pointers:[n],summary:s`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${X0(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Xc(n)})})}function X0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function G$(e){return Y$(e,yl,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${S$(ri(yl)[t])}
      ${F({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>gl({of:"own_tips",at:n})})}
    </div>`})}function Y$(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(ri(t)[l].name||`number ${l+1}`);return s`${yn(e)} ${vn(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${Gi(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:d}
      <div class="items">
        ${ri(t).map((l,u)=>s`<div class="held" id=${E(t,u)} role="group" aria-label=${r(u)}>
              ${o(u)} ${J(t,u,r(u))}
            </div>`)}
      </div>
    </section>`}var np=(e,t)=>({..._l,id:dl(e,t),name:e});function Z$(e){let t=np(e,[...a.fats,...ri(cs)]);U(cs,t,e),Ge("own_fats",String(t.id)),C(oe("own_fats",`/fats/${ri(cs).length-1}/source`))}var op=e=>({name:e});function X$(e){U(yl,op(e),e);let t=ri(yl).length-1;Ge("own_tips",`tip ${t}`),C(Xt(Ct("own_tips",`/tips/${t}`,"own")))}var eb=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},vl=sl(class extends Hi{constructor(e){if(super(e),e.type!==jn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let u of e)i[l]=o?o(u,l):l,r[l]=n(u,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=h$(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let u=this.ut??=[],c=[],p,m,_=0,b=i.length-1,v=0,T=r.length-1;for(;_<=b&&v<=T;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(u[_]===l[v])c[v]=$o(i[_],r[v]),_++,v++;else if(u[b]===l[T])c[T]=$o(i[b],r[T]),b--,T--;else if(u[_]===l[T])c[T]=$o(i[_],r[T]),qi(e,c[T+1],i[_]),_++,T--;else if(u[b]===l[v])c[v]=$o(i[b],r[v]),qi(e,i[_],i[b]),b--,v++;else if(p===void 0&&(p=eb(l,v,T),m=eb(u,_,b)),p.has(u[_]))if(p.has(u[b])){let V=m.get(l[v]),ze=V!==void 0?i[V]:null;if(ze===null){let Mo=qi(e,i[_]);$o(Mo,r[v]),c[v]=Mo}else c[v]=$o(ze,r[v]),qi(e,i[_],ze),i[V]=null;v++}else ll(i[b]),b--;else ll(i[_]),_++;for(;v<=T;){let V=qi(e,c[T+1]);$o(V,r[v]),c[v++]=V}for(;_<=b;){let V=i[_++];V!==null&&ll(V)}return this.ut=l,al(e,c),Je}});async function Te(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof w&&await Ot().catch(()=>{})}}var ip=()=>{Te(Jg)},tb=()=>{Te(Vg)};function Wt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:d}
    ${a.list_told&&Hr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${ip}>Undo</button>
          </p>`:d}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var nb=new Map,ob=Promise.resolve();function ib(e,t=""){let n=`${e}
${t}`,o=nb.get(n);return o||(o=ob.then(()=>eS(e)),ob=o,nb.set(n,o)),o}async function eS(e){try{let t=await dn({kind:"glb",gauge:{file:e}}),n=Mi(await t.arrayBuffer());return Ur(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof w)return;throw t}}var rp=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{ib(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void St(d,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,u=.04*Math.max(o-n,r-i),c=[n-u,-r-u,o-n+2*u,r-i+2*u];St(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${qr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",rp);var on=(e,t)=>s`<ul class="cards">
    ${vl(e,({file:n})=>n,t)}
  </ul>`;function kn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{Te(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:d}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:d}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>tS(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?nS(e,r):d}
  </li>`}function tS({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:Zo(n)}:void 0})}function nS(e,t){let{kind:n,one:o}=e,i=(p,m,{is_strong:_=!1,is_asleep:b=!1}={})=>s`<button
      type="button"
      class=${_?"strong":""}
      ?disabled=${b||t.is_busy}
      @click=${()=>{rb(t,m)}}
    >
      ${p}
    </button>`,r=i("Copy",()=>iS(n,o));if(o.shipped)return s`<div class="acts"><div class="choice">${r}</div></div>`;let l=["name","note"].every(p=>o[p]===t[p])&&Zo(o.file)===t.stem,u=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",c=l||!u||!t.stem.trim();return s`<div class="acts">
    ${wl(o)} ${n.called?sp(n.called==="for"?"For":"Name",t,"name"):d}
    ${n.name==="tips"?d:sp("Note",t,"note")} ${sp("Name of the file",t,"stem")}
    <div class="choice">
      ${i("Save",()=>rS(e,t),{is_strong:!0,is_asleep:c})} ${r}
      ${i("Remove",()=>ab(o,t,!1))}
    </div>
    ${t.used_by?oS(o,t):d}
  </div>`}async function rb(e,t){e.is_busy||(y(e,{is_busy:!0}),await Te(t),y(e,{is_busy:!1}))}function sp(e,t,n){let o=`list-${n}`,i=r=>y(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${P(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function oS(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{rb(t,()=>ab(e,t,!0))}}>Remove it even so</button>
  </div>`}async function iS(e,t){let n=await Qg(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Zo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function rS({kind:e,one:t},n){let{name:o,note:i,stem:r}=n;await Yg(e,t,{name:o.trim(),note:i.trim(),stem:r.trim()}),sb(n)}function sb(e){a.list_open===e&&f({list_open:void 0})}async function ab(e,t,n){let o=e.used_by??[];if(o.length&&!n)return y(t,{used_by:o});try{await Zg(e,n),sb(t)}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;y(t,{used_by:r})}}function kl(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?on(o,r=>kn({kind:e,one:r,facts:sS(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var lb=4;function sS({holds:e=[],changed:t}){let n=e.length-lb,o=n>0?[...e.slice(0,lb),`${n} more`]:e;return[o.length?Ne(o):"",t?`changed ${N(t)}`:""].filter(Boolean)}var ps="";function xl({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(ps.trim()),ps="",Q()})},r=l=>{ps=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${P(ps)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!ps.trim()} @click=${i}>${t}</button>
  </div>`}function It(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(aS)}
    </ul>
  </details>`:d}function aS(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${N(e.removed_at)}, kept until ${N(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{Te(()=>Xg(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{Te(()=>e_(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>He("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>He("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function ub(){let e=uo();return s`${Wt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${kl(un,"Each file is named by the formulas that use its fats.",t=>jr(un,t))}
      ${e?Q$(e):d}
      ${xl({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Z$(t)):Ma(un,np(t,a.fats)),tried:Te})}
    </section>
    ${lS()} ${It("fats")}`}var db="fats that are listed";function lS(){let e=a.finding?.key===db?a.finding.text:"",t=a.fats.filter(n=>Hn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${P(e)}
          @input=${n=>f({finding:{key:db,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(n=>dS(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?d:s`<p class="hint">None is called so.</p>`}
  </section>`}function dS(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=Hn(e,t),l=u=>S(u,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:d}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var cb=e=>e.goes_into==="lye",pb=({role:e})=>e==="alkali",uS=e=>pb(e)?"down":"nearest",si=(e,t)=>X(e,t,uS(t));function Tl(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>cb(i)),n=({one:i})=>i.role==="water",o=({one:i})=>pb(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function mb(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!cb(t))}function ap(e){let t=O(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${fS(e)}
    ${F({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var cS=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],fb={after:"",mass:""},hb=3,pS={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:hb},()=>fb)}}};function mS(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function fS(e){let t=mS(e);return s`${A({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:cS,puts:o=>({...ge(e,"",["drying","water_lost_in_cure"]),...pS[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:d}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:d}
  ${t==="weighed"?hS(e):d}`}function hS(e){let t={of:e,at:"/drying/weighings",least:hb};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${E(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${ee(t,"One more weighing",()=>U(t,fb,"weighing"))}`}var gS=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Rl=e=>go(e).map(t=>[t.id,t.name]),gb=["unsaid","Not given"],_b=["none","Holds none"],$b=e=>e===void 0?"unsaid":e==="none"?"none":"some",_S=e=>t=>t==="some"?e:t==="none"?"none":void 0;function bb(e,t){return lp(e,`${t}/contains_fat`,[gb,_b,["some","Holds fat"]],Rl(e))}function lp(e,t,n,o){let i=$b(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${A({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:_S({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${me({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:d}`}var $S=[gb,_b,["some","Holds acid"],["typed","By what it takes up"]],bS={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function dp(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":$b(g(e,n));return s`${A({of:e,question:"Acid in it",at:n,chosen:o,answers:$S,puts:i=>bS[i]})}
  ${o==="some"?s`<div class="row">
          ${me({label:"Which acid",of:e,at:`${n}/acid`,answers:gS.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:d}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:d}
  ${o==="some"||o==="typed"?up(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):d}`}function up(e,t,n){let o=g(e,t)===!0?"yes":"no";return A({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var wS=["tsp/lb","tbsp/lb","tsp/kg"],Sl=["%","g/kg",...wS].flatMap(e=>[`${e} of fats`,`${e} of batter`]),yb=[...Sl,"% of finished soap","g/kg of finished soap"];function wb(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Al(e,t,n,o,i=!1){let r=Y(e,t),[l,u]=wb(O(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&u)&&bt(e,t,r,l.trim()?`${n}: of what`:n);let m=Qe(e,t),_=(v,T)=>{let V=`${v.trim()} ${T}`.trim();Z(e,t,i&&!v.trim()?void 0:V),Q()},b=v=>{let T=v.target.value,[V,ze]=wb(T,o);f({typed:{key:r,text:T}}),_(V,ze||u)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${P(c)}
        @input=${b}
        @blur=${ni}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:d}
      />
      <select
        aria-label="${n}: of what"
        @change=${v=>_(c,v.target.value)}
      >
        <option value="" .selected=${P(u==="")}>of what?</option>
        ${o.map(v=>s`<option value=${v} .selected=${P(v===u)}>${v}</option>`)}
      </select>
    </div>
    ${$e(r,m)}
  </div>`}function yS(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var vS=.01+1e-9;function Yi(e,t){let{sum:n,unread:o}=yS(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=vS?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var kb=(e,t)=>go(e).find(n=>n.id===t)?.name??t,ms=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),fs=e=>k(ms(e));function pp(e){let t=fs(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>kS(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Yi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?d:bt(e,"/fats",Y(e,"/fats"),"The fats")}
    ${n?Rb(e):ee(ms(e),"Add a fat",()=>xb(e,t.length))} ${OS(e)}
  </section>`}function kS(e,t,n){let o=`/fats/${t}`,i=kb(e,String(n[t].fat??""))||"Which fat?",r=Fe(e,`${o}/fat`)??Fe(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${E(ms(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Y(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?cp():xb(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${J(ms(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:d} ${l?Rb(e):d}
    ${z$(e,String(n[t].fat??""))}
    ${F({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${RS(n[t])}`,body:()=>DS(e,t)})}
  </li>`}function xb(e,t){f({picking:{of:e,row:t,text:""}}),C(L("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function cp(){let e=a.picking;f({picking:void 0}),e&&C(oe(e.of,e.row<fs(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function mp(e,t){let{row:n}=a.picking,o=fs(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};rs(ms(e),`${kb(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],oe(e,`/fats/${n}/share`))}function Tb(e){let{row:t,text:n,lit:o}=a.picking,i=fs(e).map(u=>u.fat),r=xS(e,n),l=r.filter(u=>!i.includes(u.id)||i[t]===u.id);return{found:r,free:l,lit:l.find(u=>u.id===o)}}function vb(e){let t=a.picking;if(!a.fats.length)return f({picking:{...t,is_entered:!0}});let{free:n,lit:o}=Tb(e),i=n.find(l=>tt(l.name)===tt(t.text.trim())),r=o??(n.length===1?n[0]:i);r?mp(e,r.id):t.is_entered&&f({picking:{...t,is_entered:!1}})}function Rb(e){let{row:t,text:n}=a.picking,o=fs(e).map(m=>m.fat),{found:i,free:r,lit:l}=Tb(e),u=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&cp(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1)),m.key==="Enter"&&vb(e)};return a.picking.is_entered&&a.fats.length&&queueMicrotask(()=>a.picking?.is_entered&&vb(e)),s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:d}
          .value=${n}
          @input=${u}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${cp}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":`The list of fats is on its way ...${a.picking.is_entered?" Then what you typed is taken.":""}`}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=Hn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>mp(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{TS(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function xS(e,t){let n=go(e).filter(l=>Hn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(u=>Hn(l,u)!==void 0).length,r=Math.max(...go(e).map(i));return r?go(e).filter(l=>i(l)===r):[]}async function TS(e,t){if(!await Fa(e))return;let o=t.trim(),i=dl(o,[...a.fats,...te("own_fats","/fats")]),r=te("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{..._l,id:i,name:o}),mp(e,i),Ge("own_fats",i),C(oe("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function RS(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var SS=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],AS={published:void 0,one:"",range:{low:"",typical:"",high:""}};function DS(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(u,c)=>h({label:u,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${A({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:SS,puts:u=>AS[u],hint:PS(e,O(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:d}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:d}
  ${i!=="published"||r?up(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):d}`}function PS(e,t){let n=go(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function OS(e){let t=Gr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=O(e,"/own_fats");return F({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var FS=e=>he.includes(e);function Dl(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:zi().some(({of:t,at:n})=>Bt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function hs(){let e=a.complaint?zi():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>MS(t)}>
              ${t.part?s`<small>${t.part}</small> `:d}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:d}function MS({of:e,id:t,folds:n}){for(let o of n)ue(o);f({has_asked:!0}),FS(e)?(a.view!=="formula"||a.formula_of!==e)&&at(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>C(L(t)))}var Sb="danger-of-superfat";function fp(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:_o(e).length?Sb:void 0})}
    </div>
    ${ts(e,Sb)} ${LS(e)} ${NS(e,t)}
  </section>`}function LS(e){let t=te(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${A({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>BS(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>CS(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Yi("The two",t.map(i=>i.share))}
        </p>`:d}`}function BS(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function CS(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=Fe(e,i)??Fe(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):d}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${F({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${WS(t.purity_range)}`,body:()=>IS(e,i)})}
  </div>`}var WS=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function IS(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${A({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:d}`}var ES={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function NS(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(ES);return s`${A({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:HS(t)})}
    <div class="row">${n.map(r=>jS(e,r))}</div>`}function jS(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function HS(e){if(!(!e||a.is_old))return`It now makes a strength of ${S(e.lye_strength_percent,1)} %; ${S(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(e.water_percent_of_fats,1)} % of the fats.`}function vo(e,t,n){let o=qS(e,t);return F({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${zS(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Ab(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>KS(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function qS(e,t){let n=te(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var hp={name:"",share:""},US={unsaid:void 0,one:"",many:[hp]};function zS(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...hp,name:o}]:US[l];return s`${A({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):d}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Ab(e,t,"INCI name","One more INCI name")}`:d}`}function KS(e,t,n){return A({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Ab(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,u)=>s`<div class="row named" id=${E(r,u)}>
        ${h({label:`${n} ${u+1}`,of:e,at:`${t}/${u}/name`})}
        ${h({label:`Share ${u+1}`,of:e,at:`${t}/${u}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${u}`,u)??d} ${J(r,u,String(l.name||`${n} ${u+1}`))}
      </div>`)}
  ${ee(r,o,()=>U(r,hp,n))}`}var JS=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:i1},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:ZS},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:XS},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:e1}];function gp(e){return JS.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${E(n,l)}>
        ${QS(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${ee(n,t.add,()=>U(n,VS(t),t.add.replace("Add ","")))}
    </section>`})}function VS(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function QS(e,t,n,o,i){let r=`/${t.list}/${i}`,l=Fe(e,r),u=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?d:Al(e,`${r}/rate`,"How much",Sl)}
      ${J(n,i,u)}
    </div>`}function Db(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return A({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function Pb(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${Db(e,t,YS,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?A({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:GS,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):d}`}var GS=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],YS=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function _p(e,t,n){let o=(l,u,c)=>l?`${u}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return F({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Al(e,`${t}/limit`,"The most that the supplier's document allows",yb,!0)}`})}function $p(e,t,n,o){let i=(l,u)=>l===void 0?"":l==="none"?`no ${u}`:u,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return F({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${bb(e,t)} ${o?dp(e,t):d}`})}var Pl=(e,t,n)=>vo(e,t,String(n.name||"it"));function ZS(e,t,n){return s`${Pb(e,t,!0)}
    <div class="folds">${$p(e,t,n,!0)} ${_p(e,t,n)} ${Pl(e,t,n)}</div>`}function Ob(e,t,n){return F({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Pb(e,t,!1)})}function XS(e,t,n){return s`<div class="folds">
    ${_p(e,t,n)} ${Pl(e,t,n)} ${Ob(e,t,n)} ${$p(e,t,n,!1)}
  </div>`}function e1(e,t,n){return s`${n1(e,t)}
    <div class="folds">
      ${_p(e,t,n)} ${Pl(e,t,n)} ${Ob(e,t,n)} ${$p(e,t,n,!0)}
    </div>`}var t1=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function n1(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${A({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${me({label:"Which oil",of:e,at:`${n}/fat`,answers:Rl(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${A({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:t1,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:d}`}var o1=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function i1(e,t,n){let o=(i,r,l)=>F({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${s1(e,t,n)}
    ${Db(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${l1(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>r1(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>dp(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Pl(e,t,n)}
    </div>`}function r1(e,t){let n=g(e,t)===!0?"ice":"liquid";return A({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function s1(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...ge(e,t,["replaces","rate"]),[r]:""});return s`${A({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:a1,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:d}
  ${o==="rate"?Al(e,`${t}/rate`,"Rate",Sl):d}`}var a1=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function l1(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(u,c)=>h({label:u,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${A({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:u=>u==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${lp(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Rl(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${me({label:"Built-in figures of",of:e,at:n,answers:o1.map(u=>[u,u]),unsaid:"choose ..."})}
        </div>`}`}var gs=()=>Object.keys(g("studio","/cups")??{}),_s=()=>gs().length===1?{net:""}:gs().length?{cup:"",net:""}:{holds:"",net:""},Fb="\0another";function $s(e,t="Cup holds"){let n=`${e}/holds`,o=gs();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?d1(e):d}`;let i=l=>l===Fb?q("run","Another cup",e,{...bp(e),holds:""},oe("run",n)):q("run",`Cup: ${l}`,e,{...bp(e),cup:l}),r=l=>O("studio",`/cups/${j(l)}`);return me({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[Fb,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function bp(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var d1=e=>s`<button type="button" @click=${()=>q("run","A cup of the studio",e,bp(e))}>
    A cup of my studio
  </button>`;function Lb(){return le()?s`<div class="row">
    ${gs().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${j(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${u1()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function u1(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||Mb();t.value="",q("studio",`${n} added`,`/cups/${j(n)}`,"",oe("studio",`/cups/${j(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Mb()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function Mb(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!gs().includes(t))return t}}var c1=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),wp=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Ol(e){let{run:t}=wp(e);return F({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${le()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${yo("How warm",[wp(e)])} ${W("run",t)} ${p1(e)}`})}function p1(e){let{run:t,studio:n}=wp(e),o=u=>({run:`${t}/${u}`,studio:`${n}/${u}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(u,c,p=i)=>qe(o(u),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${me({label:"The lye cools in",...as(l),answers:c1,unsaid:"not given",optional:!0})}
  </div>`}var yt=()=>$(a.run.now,"/pipe")!==void 0;function Bb(){let e=t=>{let n=M(t,"/pipe",{formula:"",fills_headspace:"",whip:_s()});return le()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ue("set-up pipe"),wt("run","Topping added",e,L("lane-pipe"))}function m1(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:M(o,i,void 0),e)}function f1(){wt("run","Topping removed",m1,L("topping-back"))}function Cb(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||yt()?d:s`<button type="button" id="topping-back" @click=${Nr}>Bring the topping back</button>`}function yp(){return s`${v1()} ${Ol("pipe")}
    <p class="choice"><button type="button" @click=${f1}>Take the topping away</button></p>`}var h1=["trials","beads","envelope"];function vp(e){return h1.every(t=>g("run",`/pipe/${t}`)===void 0)&&bt("run","/pipe",`${Y("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${W("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ot({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:_s()},body:g1})}
      ${ot({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:$1})}
    </div>
    ${ot({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:H$,body:()=>q$(e)})}
    ${e?w1(e):d}`}function g1(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more trial",()=>U(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${$s("/pipe/trials/weigh_cup")}
    </div>
    ${W("run","/pipe/trials/weigh_cup")} ${_1()}`}var _1=()=>s`<div class="row">
    ${h({label:"Volume of one, where you know it better",at:"/pipe/trials/volume_each",unit:"ml",optional:!0,hint:"Above its foot, as your batches tell it. It is used in place of the trials; empty it to go by them again."})}
  </div>`;function $1(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${A({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var b1={given:"As you know it",trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function w1(e){let t=e.visible_by;if(!t)return d;let n=["given","trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>I({key:`pipe.by.${i}`,label:b1[i],note:o(l),shown:ve(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${y1(e)}`}function y1(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return d;let n=S(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>q("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:d}`}function kp(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${$s("/pipe/whip")}
    </div>
    ${W("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:d}`}function v1(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return F({name:"pace",pointers:[e],summary:"Piping speed",body:()=>ot({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function k1(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function bs(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,k1(e,t))}>It is really so: keep it</button>`:d}var xp=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]),Fl;function Wb(e){mo();let{plan:t,run:n,record:o,is_old:i}=a,r=[e,n.file,t,o.version];return Eb(r,!i&&t!==void 0,{mould:e,batches_of:n.file,below_brim_mm:t?.pour.below_brim_mm})}var Ib=(e,t)=>Eb([e,t],t!==void 0,{mould:e,batches_of:"studio.json"});function Eb(e,t,n){return xp(a.ways.of,e)?a.ways:(t&&!xp(Fl,e)&&x1(e,n),{})}async function x1(e,{mould:t,batches_of:n,below_brim_mm:o}){Fl=e;let i=o===void 0?{}:{"below-brim":`${o} mm`},r=await T1({file:t,"batches-of":n,...i});xp(Fl,e)&&f({ways:{of:e,...r}}),Fl=void 0}async function T1(e){try{return{ways:(await ln(e)).ways}}catch(t){if(!(t instanceof w))throw t;return{failed:B(t.complaint)}}}var Rp=500,R1=()=>$(a.run.now,"/cut")===void 0&&S1()>=Rp,S1=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Ml={run:"/cut/kerf",studio:"/kerf"};function Nb(e){ue("set-up cut"),q("run","Cut","/cut",{bar:Tp[e],...le()?{}:{kerf:""}},oe("run",`/cut/bar/${Object.keys(Tp[e])[0]}`))}function A1(){q("run","Left whole","/cut",void 0,L("cut-into-bars"))}function jb(){return R1()?s`<button type="button" id="cut-into-bars" @click=${()=>Nb("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>Nb("slab")}>Cut it into bars</button>`:d}var Tp={loaf:{thickness:""},slab:{length:"",width:""}};function D1(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var P1={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Hb(){let e=D1(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return s` ${A({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Tp[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):d}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):d}
      ${qe(Ml,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${yo("Kerf",[Ml])}</p>
    ${e?A({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:P1[e],puts:o=>o||void 0}):d}
    <button type="button" @click=${A1}>Leave it whole</button>`}var Ll=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Bl(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${P(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var Cl=e=>x(ve(a.units,e)),O1=e=>e.charAt(0).toUpperCase()+e.slice(1);function Wl({ways:e,failed:t}){return t!==void 0?s`<p class="hint">How the ways of measuring compare is not known: ${t}.</p>`:e?.ways.length?s`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${e.used_because}</p>
    <ul class="each-way">
      ${e.ways.map(n=>F1(n,e))}
    </ul>
    ${L1(e)} ${e.remarks.map(n=>s`<p class="aside">${n}</p>`)}
  </section>`:d}function F1(e,{below_brim_mm:t}){let{by:n,brimful_ml:o,at_line_ml:i,low_ml:r,high_ml:l,rests_on:u,used:c}=e;return s`<li data-by=${n} class=${c?"is-used":""}>
    <p class="way-name">
      <b>By ${n}</b> ${c?s`<span>✓ the plan uses it</span>`:s`<span>${M1(e)}</span>`}
    </p>
    ${i===null?d:s`<p>to the pour line <b class="at-line">${Cl(i)}</b></p>`}
    <p>to the brim <b class="brimful">${Cl(o)}</b></p>
    <p>
      ${r===null||l===null?d:s`between ${Cl(r)} and ${Cl(l)}${t===null?"":" to the line"}: `}${r===null?O1(u):u}
    </p>
  </li>`}function M1({differs_percent:e}){let t=Ve(Math.abs(e),1);return t==="0.0"?"the same":`${t} % ${e>0?"more":"less"}`}var L1=({below_brim_mm:e,line_of:t})=>e===null?d:s`<p class="aside">
        The pour line is ${x(_e(a.units,e))} below the
        brim${t==="as asked"?"":`, ${t}`}.
      </p>`;function B1({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,u=l-r-n,c=[e.left-n,u,e.right-e.left+2*n,-e.floor+n-u],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",qr(t,l))}${p("side",qr(e.loops))}
    </svg>
  </div>`}function Zi(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:d;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${B1(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${x(ve(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${x(ve(a.units,i.total_ml))} together`:d},
      ${x(_e(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${x(ve(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:d}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:d}`}var C1={mm:"in",g:"oz","\xB0C":"\xB0F"},W1={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Il(e,t,n=""){let o=Sp(e);if(o)return o.unit??"";let i=Mt($(K(),e));return W1[t]?.test(i)?i:n||(a.units==="us"?C1[t]??t:t)}var El=()=>f({typed:void 0}),Xi=e=>`d${e.replaceAll("/","-")}`,Sp=e=>a.typed?.key===Xi(e)?a.typed:void 0,Nl=e=>Sp(e)?.text??String($(K(),e)??"");function ko(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function Ap(e,t,n,o){let{pointer:i}=e,r=l=>{let u=l.target.value,c=e.unit?Il(i,e.unit,e.unit_before):"";f({typed:{key:Xi(i),text:u,unit:c}}),Ce(i,I1(e,u,c))};return s`<input
    id=${Xi(i)}
    .value=${P(Nl(i))}
    @input=${r}
    @blur=${El}
    @keydown=${n??d}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??d}
    aria-describedby=${t??d}
    aria-invalid=${ko(i)?"true":"false"}
  />`}function I1(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Oe(t)?`${t.trim()} ${n}`:t}function vt(e,t){let n=Xi(e.pointer),o=ko(e.pointer),i=E1(e.pointer)??e.hint,r=e.unit?` (${Il(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${Ap(e,o||i?`${n}-said`:void 0,t)}
    ${$e(n,o,i)}
  </div>`}function E1(e){let t=$(K(),e),n=Sp(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function jl(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function ws(e){let{open:t}=ie();try{if(await cn(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await ta()})}catch(n){if(!(n instanceof w))throw n;return Mc(n)}a.run.file&&(Jt(),se()),e(t.file)}var Kn="/shape/points",qb=500,xo=(e,t)=>[Kn,e,...t?[t]:[]].join("/"),Ub=e=>Array.from({length:e.least},()=>({}));function zb(e){let t=pt(K(),Kn),n=j1(),{complaint:o}=ie(),i=o?.field===Kn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Il(xo(-1,r.name),r.unit,Kb(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>N1(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:d}
    <button type="button" ?disabled=${t.length>=qb} @click=${()=>ql(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function N1(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=H1(t),r=l=>{let{name:u,label:c,unit:p}=e.columns[l],m={label:c,pointer:xo(t,u),unit:p,unit_before:Kb(e,t,u)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return Ap(m,i?`point-${t}-said`:void 0,q1(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>ql(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Jb(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:d}
  </div>`}function j1(){let e=[...Dr(K()),...ha(K())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function H1(e){let{complaint:t}=ie();return ko(xo(e))??(t?.about===xo(e)?t.line:void 0)}function Kb(e,t,n){let o=(i,r)=>Mt($(K(),xo(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Hl(e,t){queueMicrotask(()=>document.getElementById(Xi(xo(e,t)))?.focus())}function ql(e,t){let n=[...pt(K(),Kn)];n.length>=qb||(n.splice(t,0,{}),El(),Ce(Kn,n),Hl(t,e.columns[0].name))}function Jb(e,t,n=0){let o=pt(K(),Kn).filter((i,r)=>r!==t);El(),Ce(Kn,o.length?o:[{}]),Hl(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function q1(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Nl(xo(t,o))&&!Nl(xo(t,i));if(r.key==="Enter"&&r.shiftKey)ql(e,t+1);else if(r.key==="Enter"&&n===0)Hl(t,i);else if(r.key==="Enter"&&t+1<pt(K(),Kn).length)Hl(t+1,o);else if(r.key==="Enter")ql(e,t+1);else if(r.key==="Backspace"&&l&&pt(K(),Kn).length>1)Jb(e,t,t>0?1:0);else return;r.preventDefault()}}var Dp={weighings:[""]},Pp=/\.(3mf|gltf|glb)$/i;function Ul(e){let t=Yn(e);return t?{kind:e,points:Ub(t)}:{kind:e}}var U1=()=>Ce("/water",Dp),xn=e=>jt(K(),e),ys=()=>Ar(K());function Vb(e){let{open:t,answer:n,is_old:o}=ie();return s`${yn(t,()=>{ws(e)})} ${vn(t)}
    ${t.shipped?d:Gi(a.files?.moulds.find(i=>i.file===t.file))}
    ${xn("shape")&&xn("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:d}
    ${xn("shape")?ce("Shape",ys(),Object.entries(Mh),z1):d}
    <div class="beside ${Yn(ys())?"rows":""}">
      <div>
        ${Op()} ${xn("shape")?J1():d} ${xn("mesh")?V1():d}
        ${Fp()} ${xn("water")?G1():d} ${Z1()}
      </div>
      <div class="stays">${Zi(n,o,Gb())} ${X1(e)}</div>
    </div>`}function z1(e){let t={...ie().shapes,[ys()]:K().shape};y(ie(),{shapes:t,answer:void 0}),Ce("/shape",t[e]??Ul(e))}function K1(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Op(){let e=K1();return vt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function J1(){let e=ys(),t=Yn(e);return s`${yi(e).length?s`<div class="row">
          ${yi(e).map(n=>vt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:d}
  ${t?zb(t):d}`}function Fp(e=mu(K())){return s`<div class="row">
      ${e?d:vt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${vt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${vt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${vt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Mp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Lp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function V1(){let e=o=>String($(K(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=ko(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ce(o,e(i),r,u=>Ce(`/mesh/${i}`,u||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:d}`},n=ko("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:d}
    ${Pp.test(e("file"))&&!e("unit")?d:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Mp)} ${t("Which way is up","up",Lp)}
    ${e("role")==="body"?Q1():d}
    <div class="row">
      ${vt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${vt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function Q1(){let e=$(K(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ce("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>Ce("/mesh/on_board",t==="yes"?!0:void 0))}`}function G1(){let e=$(K(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>Ce("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(K(),"/water/weighed_in"),i=t===void 0||t==="brim"?ko("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${vt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ce("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:d}
    ${t==="depth"?vt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):d}
    ${t==="below_brim"?vt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):d}
    <h4>Weighed in</h4>
    ${ce("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>Ce("/water/weighed_in",r))}
    <div class="row">
      ${pt(K(),"/water/weighings").map((r,l)=>vt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},Y1(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:d}
    <button type="button" @click=${Qb}>One more round</button>`}function Qb(){let e=pt(K(),"/water/weighings").length;Ce(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var Y1=e=>t=>{t.key==="Enter"&&(e+1===pt(K(),"/water/weighings").length?Qb():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function Z1(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${xn("shape")?d:e("Add measures, as a check",()=>Ce("/shape",Ul("block")))}
    ${xn("shape")&&xn("mesh")?e("Leave the measures out",()=>Ce("/shape",void 0)):d}
    ${xn("water")?e("Leave the water out",()=>Ce("/water",void 0)):e("Add weighed water",U1)}
  </div>`}function Gb(){let e=ha(K()).length;return e?[...Pr(K()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Pr(K())}function X1(e){let t=String(K().name??"").trim(),n=jl(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),u=i&&!r&&!l&&!Gb().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!u} @click=${()=>{ws(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:d}
    ${t?d:s`<p class="hint">Give it a name first.</p>`} ${Bp(t,n)}
    ${l?s`<p class="alarm" role="status">${eA(l.field)}${l.line}</p>
            ${bs(K(),l.keep,Ce)}`:d}`}var Bp=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:d;function eA(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=yi(ys()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var tA=200*2**20;async function Yb(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),Ce("/name",e.name.replace(/\.\w+$/,"")),e.size>tA){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return y(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Vf(e,o=>y(t,{share:o}));y(t,{share:1,upload:n.file}),await Xb(t)}catch(n){y(t,{complaint:n instanceof w?n.message:String(n)})}}async function Xb(e){let t=e.questions+1;y(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await Li({file:n,unit:o,role:i,up:r});t===e.questions&&y(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(t!==e.questions)return;let u=o?e.sizes:rA(l.complaint),c=u.length&&!o?void 0:B(l.complaint);y(e,{sizes:u,complaint:c,is_measuring:!1})}}async function nA(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await qf({file:n,unit:o,up:i});t===e.questions&&y(e,{inspection:r})}catch(r){if(!(r instanceof w))throw r;t===e.questions&&y(e,{complaint:B(r.complaint)})}}function oA(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(iA)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{nA(e)}}>List every defect of the mesh</button>`}var iA=({text:e})=>s`<li>${e}</li>`;function rA({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Cp(e,t){y(e,t),Xb(e)}function ew(e,t){let n=l=>{let u=l.target;Yb(u.files?.[0]),u.value=""},o=l=>{l.preventDefault(),Yb(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?sA(a.mesh,e,t):d}`}function sA(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:d}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:d}
    ${e.upload&&!Pp.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ce("Unit of the file's numbers",e.unit,i,r=>Cp(e,{unit:r}))}`:d}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:d}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?oA(e):d}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ce("Role",e.role??e.answer?.gauge.role,Mp,r=>Cp(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ce("Up",e.up??"",Lp,r=>Cp(e,{up:r||void 0}))}`:d}
    ${e.answer?s`${Zi(e.answer)} ${aA(e,t,n)}`:d}`}var tw=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function aA(e,t,n){let o=String(K().name??"").trim(),i=jl(o),r=o&&!i&&!e.is_keeping;return s`${Op()} ${Fp(tw(e))} ${Bp(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Zb(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Zb(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:d}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Zb(e,t,n){y(e,{is_keeping:!0});try{let o=lA(e,await Qf(e.upload,uA(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await dA(o))return t(o);Ni(o,"mesh",ie().title),await ws(n),y(e,{complaint:a.mould?.complaint?.line})}catch(o){y(e,{complaint:o instanceof w?o.message:String(o)})}y(e,{is_keeping:!1})}function lA(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=K();return{...i,...tw(e)||o===void 0?{}:{cavities:o},mesh:n}}async function dA(e){try{return await ln({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof w&&t.status===422)return!1;throw t}}var uA=e=>vi(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var zl={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},nw={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function ow(e){De(),_n();let t={...nw,shape:Ul("block")};e==="mesh"?Ni(nw,"mesh",zl[e]):Ni(e==="water"?{...t,water:Dp}:t,"form",zl[e]),Jl()}async function iw(e,t){_n();let n=await Z_(e,t);return n&&Jl(),n}async function Kl(e){_n(),await X_(e)&&Jl()}function cA(e){Ni(e,"form","More about this mould"),Jl()}function Jl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function rw(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?ew(e,cA):Vb(e)}
  </section>`}var Wp=()=>f({chosen_mould:void 0});function vs(e,t){De();let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),sw(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var pA=2e3;async function sw(e){if(e===a.chosen_mould)try{y(e,{answer:await Li({file:e.file})}),y(e,{complaint:void 0})}catch(t){y(e,{complaint:t instanceof w?t.message:String(t)}),t instanceof w&&t.may_pass&&window.setTimeout(()=>{sw(e)},pA)}}var mA=e=>a.files?.moulds.find(t=>t.file===e);function aw(e,t){let n=()=>t(async()=>{await iw(e.file,e.shipped)&&Wp()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:d} ${e.note?s`<p>${e.note}</p>`:d}
    ${wl(mA(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:d}
    <div class="beside">
      <div>
        ${e.answer?Zi(e.answer):e.complaint?d:s`<p role="status">Measuring ...</p>`}
        ${Wl(Ib(e.file,e.answer?.gauge))}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?d:gA(e,t)}
    </div>
  </section>`}var lw=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=Rp;function fA(e){let t=lw(e)?e.slice.trim():"";return Oe(t)?`${t} mm`:t||void 0}var hA=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${P(e.slice)}
      @input=${t=>y(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function gA(e,t){let n=Ll(e.sell),o=fA(e),i=r=>()=>t(()=>nl({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Bl("mould-sell",e.sell,r=>y(e,{sell:r}))}
      ${lw(e)?hA(e):d}
    </div>
    ${n?d:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function ks(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l,stock:u}=a;if(e!=="reading")return On(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e==="trail"?{name:e,file:u.trail?.of}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:vr[o],file:t.file,of:t}}async function uw({name:e,file:t}){let n=De();if(!(!(e===vr.apart&&a.formulas.apart?.file===t)&&!await ol())&&n())try{await _A(e,t)}catch(i){if(!(i instanceof w||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function _A(e,t=""){let n=e;if(On(n))return dw(t,n);let o=["pour","pipe"].find(i=>vr[i]===e);if(o){await dw(t,"formula"),a.view==="formula"&&at(o);return}if(e===vr.apart)return es(t);if(e==="order")return Gt(t);if(e==="trail"&&t)return Be(t);await $A(e,t)}async function dw(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await Nn(e,t)}async function $A(e,t){let n=e;Wp(),_n(),f({view:ct(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=ka(it).find(i=>i.id===t);e==="describing"&&o&&await Kl(o),e==="chosen"&&vs(t),e==="shelf"&&bA(),wA()}function bA(){T_(),ho()}async function wA(){try{await Ot(),Ya()}catch(e){if(!(e instanceof w))throw e;f({list_complaint:e.message})}}var kt={id:""},Ze,Ip=!1,Np=new Map,Vl=JSON.parse(sessionStorage.getItem("left")??"{}");function pw(){let e=ks();Ip||!e||Ze&&Rt(Ze)===Rt(e)||(Ql(),mw(e))}function mw(e){let t=!Ze||Ze.name===e.name&&Ze.of!==void 0&&Ze.of===e.of;if(Ze=e,t)return er();kt={id:crypto.randomUUID(),before:location.hash},Np.set(kt.id,e.of),history.pushState(kt,"",Rt(e)),requestAnimationFrame(vA)}function er(){Ze&&(kt.id||(kt={id:crypto.randomUUID()}),Np.set(kt.id,Ze.of),history.replaceState(kt,"",Rt(Ze)))}var yA="button, input, select, summary, a[href], [tabindex]",Ep=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),fw=e=>[...document.querySelectorAll(`#main :is(${yA})`)].filter(t=>Ep(t)===e);function Ql(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Vl[kt.id]={scroll:scrollY}:Vl[kt.id]={scroll:scrollY,words:Ep(e),nth:fw(Ep(e)).indexOf(e)}}function vA(){scrollTo(0,0),document.activeElement?.closest("#main")||hw()}function hw(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function gw(){let{scroll:e,words:t,nth:n=0}=Vl[kt.id]??{scroll:0},o=t===void 0?void 0:fw(t)[n];o?o.focus({preventScroll:!0}):hw(),scrollTo(0,e)}var Xe=e=>_w({name:e,file:On(e)?a.run.file:void 0});async function _w(e){Ql(),await jp(e,()=>{let t=ks();t&&!(Ze&&Rt(Ze)===Rt(t))&&mw(t)})}async function jp(e,t){Ip=!0;try{await uw(e)}finally{Ip=!1,t()}}function $w(e){kt.before===Rt(e)?history.back():_w(e)}var cw=Promise.resolve();function kA(e,t){Ql();let n=()=>history.state?.id!==e?.id;cw=cw.then(async()=>{if(!t)return er();if(n())return;let o=e?Np.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await jp(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{Ze=ks(),!n()&&(kt=e??{id:crypto.randomUUID()},er(),requestAnimationFrame(gw))})})}function bw(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Pf()||kA(e.state,Yd(location.hash))}),addEventListener("pagehide",()=>{Ql(),sessionStorage.setItem("left",JSON.stringify(Vl))})}async function ww(){let e=Yd(location.hash);e&&(kt=history.state??{id:""});let t=De();await K_(Zf(e)),e&&t()&&xA(e)&&await jp(e,()=>{Ze=ks(),er(),requestAnimationFrame(gw)}),await Sc()}var xA=e=>!Ze||Rt(Ze)===Rt(e);function ai(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Dl()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Jn(t.field)}${B(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${qp}>Ask again</button>`:d}
              ${Bt("run")?bs(a.run.now,t.keep,(n,o)=>Z("run",n,o)):Hp(t)}
              ${TA()?s`<button type="button" @click=${Up}>Go to the field</button>`:d}`:d}
    </div>
    ${hs()}`}function Hp({keep:e}){let{studio:t}=a.beside;return t&&Bt("studio")?bs(t.now,e,(n,o)=>Z("studio",n,o)):d}function Jn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function qp(){se(),a.run.failed&&pn()}function TA(){if(yw())return!0;let e=$n();return e?document.activeElement!==e:RA()}var RA=()=>a.view!=="set-up"&&Bt("run")&&a.complaint!==void 0&&a.complaint.field!=="",yw=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&Bt(e));function Up(){let e=$n(),t=yw();if(e)return nt(e);t?at(t):Xe("set-up"),SA(()=>nt($n()))}function SA(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var vw=()=>[...ya().map(e=>yn(e)),...wa().map(vn)];function kw(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${vw()}${ai()}
      <p>Reading the formula ...</p>
      ${Kp(e)}`;let n=a.plan&&Qi(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${vw()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${AA(e)}</p>
    <div class="choice">${Kp(e)}${e==="apart"?DA():d}</div>
    ${Gi(a.files?.formulas.find(i=>i.file===t.file))} ${PA(e,o,n)} ${Tw(e)}
    ${pp(e)} ${fp(e,o)} ${gp(e)} ${ap(e)}
    <div class="choice">${Kp(e)}</div>`}var xw=e=>[Tw(e),pp(e),fp(e,void 0),gp(e),ap(e)],zp=()=>String(a.run.now.name??a.run.file);function AA(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${zp()}".${n}`:o?`Base and topping of "${zp()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${zp()}".${n}`}function Kp(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>$w(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function DA(){return s`<button type="button" @click=${()=>{Ac("pour")}}>Use it as the base</button> ${yt()?s`<button type="button" @click=${()=>{Ac("pipe")}}>Use it as the topping</button>`:d}`}function PA(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...OA(e,n),...FA(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?wo(r):d}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:d}
    ${MA(e)}
  </section>`}function OA(e,t){let n=e==="pipe"?tp(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ye(t.whole)?[["For one batch",nn(t.whole,t.batch)]]:[]}function FA(e,t){let n=_o(e).length?" \u26A0":"";return[["Fats",x(H(a.units,t.fats_g))],["Superfat as weighed",`${lt(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Tl(t).map(({one:o})=>[o.name,x(si(a.units,o))])]}function MA(e){let t=Dl()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${hs()}`;let n=Bt(e),o=n&&t.field!==""&&document.activeElement!==$n();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Jn(t.field)}${B(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${qp}>Ask again</button>`:d}
      ${o?s`<button type="button" @click=${()=>$n()?.focus()}>Go to the field</button>`:d}
    </div>
    ${hs()}`}function Tw(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${F({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Jp=e=>y(a.new_formula,e);function Rw(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>Te(async()=>{await i(e.trim()),Jp({name:"",copied:""})});return s`${Wt("Formulas")}
    <section aria-label="Formulas">
      ${on(n,LA)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${P(e)}
            @input=${i=>Jp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(V_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Jp({copied:i.target.value})}
          >
            <option value="" .selected=${P(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${P(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Q_(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${It("formula")}`}function LA(e){let t=e.changed?[`changed ${N(e.changed)}`]:[];return kn({kind:Ho,one:e,facts:t,open:()=>es(e.file)})}function BA(e){_n(),vs(e,`Saved in ${e}.`)}function Sw(){let{chosen_mould:e}=a;return s`${Wt("Moulds")}
  ${e?aw(e,Te):rw(BA)??s`${EA()} ${CA()}`}`}function CA(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${on([...e,...t],WA)} ${It("mould")}
  </section>`}function WA(e){let t=e.shipped?IA(e.file):HA(e.file),n=()=>Promise.resolve(vs(e.file));return kn({kind:it,one:e,facts:t,picture:e.file,open:n})}var IA=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${x(ve(a.units,t.brimful_ml))}, ${z(t.cavities,"cavity","cavities")}; ${t.description}`);function EA(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${NA()}
    <div class="choice">
      ${Object.entries(zl).map(([e,t])=>s`<button type="button" @click=${()=>ow(e)}>${t}</button>`)}
    </div>
  </section>`}function NA(){return ka(it).map(e=>{let t=String(we(e.text)?.name??"").trim()||jA(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Te(()=>Kl(e))}>Continue</button>
        <button type="button" @click=${()=>{eo(it,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var jA=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function HA(e){let t=vc(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[x(ve(a.units,t.brimful_ml)),z(t.cavities,"cavity","cavities")]:["measuring ..."]}var qA=300,UA=1e3;function Gl(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&zA();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Qp(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var xs,Vp=!1;function zA(){let{plan:e,quote_wish:t}=a;Vp||xs?.of===e&&xs?.wish===t||(window.clearTimeout(xs?.timer),xs={of:e,wish:t,timer:window.setTimeout(()=>{JA()},a.quoted?qA:0)})}var Yl=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Aw(e,{numbers:t="",by:n,figure:o}){let i=Yl(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Zl=()=>Aw({file:a.run.file,run:a.run.now},a.quote_wish);function KA(e,{numbers:t=""}){return e.field==="/sell"&&Yl(t)?{...e,file:"",field:"sell"}:e}async function JA(){xs=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){Vp=!0;try{let r=await jf(Aw(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof w))throw r;if(e!==a.run)return;let l=KA(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Qp,UA)}finally{Vp=!1}}}var VA=300,Dw=1e3,Yp=({open:e})=>[e.now,e.file,a.plan,Jo(),a.recorded],Zp=e=>{let{by:t,figure:n}=a.quote_wish;return[...Yp(e),e.times,t,n]},ed=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function Pw(){let e=pe(),{quoted:t}=e;if(!mn(e.open.now)||e.open.theirs)return{is_old:!0};let n=ed(t?.of,Zp(e));!n&&!a.is_old&&QA(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Ow(){let e=pe(),t=mn(e.open.now)&&ed(e.once?.of,Yp(e));return{made:e.once?.made,is_old:a.is_old||!t}}function td(){let{quoted:e}=pe();e&&y(pe(),{quoted:{...e,of:[]}})}function Xp({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=Yl(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Xl,Gp=!1;function QA(e){let t=Zp(e);Gp||ed(Xl?.of,t)||(window.clearTimeout(Xl?.timer),Xl={of:t,timer:window.setTimeout(()=>{GA(e)},e.quoted?VA:0)})}async function GA(e){if(Xl=void 0,e===a.order){Gp=!0;try{if(await rt(),await ht(),await Ri(),await Va(),!mn(e.open.now))return;let t=Zp(e);await YA(e,t)}catch(t){if(!(t instanceof w))throw t}finally{Gp=!1,y(e,{})}}}async function YA(e,t){let n=Yp(e);try{let o=await Gd(Xp(e));y(e,{quoted:{of:t,quote:o}});let i=Fw(o);if(i)return y(e,{once:{of:n,made:i}})}catch(o){if(!(o instanceof w))throw o;y(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:o.complaint}}),o.may_pass&&window.setTimeout(()=>e===a.order&&td(),Dw)}Ti(e.open.now).length&&!ed(e.once?.of,n)&&await ZA(e,n)}var Fw=({times:e})=>e.find(t=>t.times===1);async function ZA(e,t){let{file:n,now:o}=e.open;try{y(e,{once:{of:t,made:Fw(await Gd({file:n,order:o}))}})}catch(i){if(!(i instanceof w))throw i;y(e,{once:i.may_pass?void 0:{of:t}}),i.may_pass&&window.setTimeout(()=>e===a.order&&td(),Dw)}}function Mw(){let{now:e}=pe().open;return s`<div class="row">
      ${me({of:"order",label:"Pieces that are made already",at:"/ready",answers:[["take","take them first"]],unsaid:"leave them",optional:!0,chosen:e.ready==="take"?"take":""})}
    </div>
    ${gt(e).map((t,n)=>XA(t.ready,n))}`}function XA(e,t){let n=`/lines/${t}/ready`;if(e===void 0)return s`${W("order",n)}`;let o=Array.isArray(e)?`takes pieces of ${e.length===1?"batch":"batches"} ${e.join(", ")} alone`:e==="take"?"takes pieces that are made already":"leaves them";return s`${W("order",n)}
    <p>
      Line ${t+1} ${o}, whatever the order says.
      <button type="button" @click=${()=>Z("order",n,void 0)}>Line ${t+1}: as the order says</button>
    </p>`}var Lw=(e,t)=>Z("order",`/lines/${e}/ready`,t);var tr={of:"order",at:"/lines",in_order:!0,stays:!0};function Bw(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${W("order","/lines")} ${k(tr).map((e,t)=>eD(t))} ${tD()} ${Mw()}
  </section>`}var Cw=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function Ww(e){let t=At(pe().open.file,e);return a.files?.runs.find(n=>n.file===t)}var Iw=e=>Ww(e)?.name||e;function Ew(e){let{file:t,now:n}=pe().open,o=Le(t),i=gt(n).flatMap(({run:r})=>r&&r!==e?At(t,r):[]);return Cw().filter(({file:r})=>r.startsWith(o)&&!i.includes(r)).map(({file:r,name:l})=>[r.slice(o.length),l||r])}function eD(e){let{run:t}=gt(pe().open.now)[e]??{run:""},n=`/lines/${e}`,o=Ww(t)?.pieces,i=t?Iw(t):`line ${e+1}`;return s`<div class="row" id=${E(tr,e)} role="group" aria-label=${i}>
    ${me({of:"order",label:"Run",at:`${n}/run`,answers:Ew(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${z(o,"piece")}`})}
    ${k(tr).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):d}
    ${J(tr,e,i)}
  </div>`}function tD(){let e=Ew();return Cw().length?e.length?s`<div class="row">
    ${me({of:"order",label:k(tr).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&U(tr,{run:t},Iw(t))})}
  </div>`:s`${d}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}async function li(e,t){try{if(Nw(e))return await nD(e,t);if(Ha({run:e},t),a.run.file!==e)return await Nn(e,"record");a.record.run===e&&gn(t),f({view:"record"})}catch(n){if(!(n instanceof w))throw n;D(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}var Nw=e=>a.files?.orders.some(t=>t.file===e)??!1;async function nD(e,t){await Gt(e);for(let n of Ti(pe().open.now)){let{record:o}=await zr({run:e,together:n},t);if(o.batches.some(({begun:i})=>i.id===t))return oD({run:e,together:n},t)}D("No lines of this order are poured from that base any more")}function oD(e,t){em(e.run,e.together),Ha(e,t),Vr(e),gn(t),Pe({is_led_to:!0})}var jw=e=>`poured together ${e}`;function em(e,t){sessionStorage.setItem(jw(e),t),f({})}function Hw(e,t){let n=sessionStorage.getItem(jw(e));return t.find(o=>o===n)??t[0]}async function qw(e){try{let{trail:t}=await Qa(`batch ${e}`),n=t.batches.find(({batch:o})=>o===e);if(n&&Nw(n.file))return await li(n.file,n.id)}catch(t){if(!(t instanceof w))throw t}Be(`batch ${e}`)}var Ts=e=>{let{beginning:t}=a.record;t&&Pe({beginning:{...t,...e}})},Uw=e=>Pe({beginning:{batch:e,act:crypto.randomUUID(),code:"",answers:{}},told:void 0}),tm=()=>Pe({beginning:void 0}),zw=e=>Ts({code:e,complaint:void 0});async function nm(e){let{beginning:t,together:n}=a.record;if(!(!t||t.is_asking)){Ts({is_asking:!0,complaint:void 0});try{n!==void 0?await rt():a.run.shipped&&await to(a.run),await ht(),await(n===void 0?iD(t,e):rD(t))}catch(o){if(!(o instanceof w))throw o;Ts({complaint:o.complaint}),D(`Not begun: ${o.complaint.problem}`)}finally{Ts({is_asking:!1})}}}var Kw=({batch:e,code:t,answers:n})=>({batch:e,code:t.trim()||void 0,again:Vt(e)!==void 0,...n});async function iD(e,t){let n=a.run.file,o=Jw(await oc({run:n,seen:t,...Kw(e)}),{run:n});Ka(o,Qo(e.batch)),await Cn()}async function rD(e){let{run:t,together:n}=a.record,{act:o}=e,i=await oc({run:t,together:n,act:o,...Kw(e)});a.record.run!==t||a.record.together!==n||gn(Jw(i,{run:t,together:n}).begun.id)}function Jw(e,t){let[n]=e.record.batches;return Pe({...t,beginning:void 0,told:{batch:n.begun.id,remarks:(e.record.remarks??[]).map(o=>o.text)}}),ja(e,t),D(`The record is begun: ${n.begun.code}`),n}async function Vw(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};Ts({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await nm(t)}var om=(e,t)=>Pe({code:{batch:e,text:t}}),nd=()=>Pe({code:void 0});async function Qw(){let{code:e,run:t,together:n}=a.record;if(!e?.text.trim())return nd();try{let o=crypto.randomUUID(),i={run:t,together:n};ja(await Wa({...i,batch:e.batch,act:o,code:e.text.trim()}),i),nd()}catch(o){if(!(o instanceof w))throw o;Pe({code:{...e,complaint:B(o.complaint)}})}}var Rs="batch-code";function nr({begun:e,lines:t}){let{code:n}=a.record,o=n?.batch===e.id,i=()=>{om(e.id,e.code),C(L(Rs))};return s`<div class="batch-code">
    <p>
      <span class="aside">${t.length?"On the pot:":"On the mould:"}</span> <b class="code">${e.code}</b>
    </p>
    ${o?s`<div class="row">
            <div class="field ${n.complaint?"wants":""}">
              <label for=${Rs}>Another code</label>
              <input
                id=${Rs}
                autocomplete="off"
                .value=${P(n.text)}
                aria-describedby=${n.complaint?`${Rs}-said`:d}
                @input=${r=>om(e.id,r.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Qw()}}>Use this code</button>
            <button type="button" @click=${nd}>Leave it</button>
            ${n.complaint?s`<p class="complaint" id="${Rs}-said">${n.complaint}</p>`:d}
          </div>`:s`<button type="button" @click=${i}>Change the code</button>`}
  </div>`}function od(){let{batches:e}=a.record;if(e.length<2)return d;let t=Wi();return s`<ul
    class="makings"
    aria-label=${a.record.together===void 0?"Batches of this run":"Batches of this base"}
  >
    ${[...e].reverse().map(n=>sD(n,n.begun.id===t?.begun.id))}
  </ul>`}function sD(e,t){let{id:n,code:o}=e.begun,i=za(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>gn(n)}>
      <b>${o}</b> <span>${Ss(e)}</span>
      <small>${rm(e)}; ${z(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function Ss({number:e,begun:t,lines:n}){let{of:o=1}=a.record,i=o>1||e>1?`batch ${e} of ${Math.max(o,e)}, `:"",r=n.length?"":`${z(t.pieces,"piece")}, `;return`${i}${r}begun ${N(t.begun_on)}`}var im=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${xe(t)}`,rm=e=>e.lines.length?`poured into ${e.lines.map(({code:t})=>t).join(", ")}`:im(e);var sm="begin-title";function Gw(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return d;let{number:n,since:o}=e,i=o===void 0?void 0:Vt(n,o);return i?aD(i,e):am(e)}function am(e,t="Lye is mixed: begin the record"){let{number:n,is_due:o}=e,{beginning:i}=a.record;return i?.batch===n?lD(i,e):s`<div class="begin-record">
    <button type="button" class=${o?"strong":""} @click=${()=>{Uw(n),C(L(sm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))}}>${t}</button>
  </div>`}function aD(e,{show:t}){let n=()=>{gn(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${nr(e)}
    <button type="button" class="strong" @click=${n}>Note what happens</button>
    ${lm(e)}
  </div>`}function lm({begun:e}){let{told:t}=a.record;return t?.batch===e.id&&t.remarks.length?s`<ul class="begin-remarks" role="status">
        ${t.remarks.map(n=>s`<li>${n}</li>`)}
      </ul>`:d}function lD(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Vt(n),{complaint:u,is_asking:c}=e,p=i===void 0,m=!r&&!c&&(p||!io(n));return s`<div class="begin-record asked" role="group" aria-labelledby=${sm}>
    <p id=${sm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?dD(l,t):d}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">${p?"Code on the pot":"Code on the mould"}</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${P(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${_=>zw(_.target.value)}
        />
        <p class="hint" id="code-to-begin-said">
          Left blank: the day and the next letter.${p?" Each line gets the same with a number behind.":""}
        </p>
      </div>
      <button type="button" class="strong" ?disabled=${!m} @click=${()=>{nm(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${tm}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:d}
    ${u?uD(u,i):d}
  </div>`}var dD=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${rm(e)}. If this is the same soap, go
      on in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{tm(),gn(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function uD(e,t){let n=e.choices??[],o=a.files?.orders.find(({file:i})=>cD(e.file,i))?.file;return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${xa(e.problem)}.`:`${B(e)}.`}
    </p>
    ${o!==void 0&&n.length?s`<button type="button" class="answer" @click=${()=>{Gt(o)}}>To the order</button>`:d}
    ${n.map(i=>s`<button type="button" class="answer" @click=${()=>{Vw(i,t)}}>
          ${pD(i,e)}
        </button>`)}
  </div>`}var cD=(e,t)=>e===t||e.endsWith(`/${t}`);function pD(e,{field:t}){let{confirmed:n,lot:o}=e;return n==="by-itself"?"This batch is mixed by itself":n&&t==="begin"?`It is made once more, besides ${n}`:e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:o?`Take ${o}`:`It is so: ${n??""}`}var mD={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function As({kind:e,unit:t}){let n=mD[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var Yw="degrees",fD=()=>localStorage.getItem(Yw)??void 0,Zw=e=>localStorage.setItem(Yw,e);function dm(e){return e.kind!=="temperature"?As(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":fD()}function Xw(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=Mt(o);return As(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function ey({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Oe(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function id({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Oe(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var rn,hD=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function rd(e,t){let n=hn(e.begun.id,t.key),o=hD(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${gD(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:d}
      ${vD(e,t,n)}
    </p>
    ${RD(e,t,o,n)}
  </div>`}function gD(e,t,n,o){if(t.kind==="choice")return yD(e,t,n,o);let i=ty(e,t,o),r=As(t).length>0||t.kind==="count",l=c=>um(e,t,{...i,number:c.target.value}),u=c=>{ni(c),_D(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":d}
      class=${r?"number":""}
      autocomplete="off"
      .value=${P(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||id(t,i)?`${n}-said`:d}
      @input=${l}
      @blur=${u}
      @keydown=${c=>c.key==="Enter"&&$D(c)}
    />
    ${bD(e,t,i)} ${wD(e,t,i)}`}function ty({begun:e},t,n){if(rn?.batch===e.id&&rn.key===t.key)return rn.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:dm(t)};let o=Xw(t,n?n.value:t.noted??"");return{...o,unit:o.unit??dm(t)}}function um(e,t,n,o=!1){rn={batch:e.begun.id,key:t.key,typed:n},ny(e,t,n,o),Q()}function ny(e,t,n,o){let i=id(t,n)!==void 0;mc(e,{key:t.key,text:n.number,value:ey(n),is_left:o,lacks:i})}function _D(e,t){if(rn?.batch!==e.begun.id||rn.key!==t.key)return;let{typed:n}=rn;rn=void 0,ny(e,t,n,!0),Q()}function $D({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function bD(e,t,n){let o=As(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:d;let i=r=>{Zw(r),um(e,t,{...n,unit:r},!0)};return oy(`Degrees: ${t.words}`,o,n.unit,i)}function wD(e,t,n){if(t.kind!=="length")return d;let o=i=>um(e,t,{...n,side:i},!0);return oy(`Side: ${t.words}`,["above","below"],n.side,o)}var oy=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function yD(e,t,n,o){let i=o?o.value:t.noted,r=l=>{fo(e,t.key,l),D(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:d}
  </div>`}function vD({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=rn?.batch===e.id&&rn.key===t.key;return t.noted!==void 0&&!(o&&!rn.typed.number.trim())?s`<span class="stands kept">✓ noted ${TD(t.noted_at)}</span>`:d}var kD=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),xD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function TD(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?kD:xD).format(t)}function RD(e,t,n,o){if(o?.refused)return cm(o,`${n}-said`);let i=id(t,ty(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:d}function cm(e,t){let{words:n,is_asked:o,noted:i,is_lye:r}=e.refused,l=e.value||"nothing",u=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class=${r?"alarm":"complaint"} id=${t} data-lye=${r?"true":d}>
      ${r?s`<strong aria-hidden="true">⚠</strong> `:d}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||u?s`<div class="row">
            ${u?s`<button type="button" @click=${()=>$_(e)}>Keep ${i||"it blank"}</button>`:d}
            <button type="button" @click=${()=>__(e)}>
              ${u?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:d}
  </div>`}var iy="record weights";function ry(e){let{rows:t=[]}=e;if(!t.length)return d;let n=a.open.has(iy),o=t.filter(i=>n||i.noted!==void 0||hn(e.begun.id,i.key));return s`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>s`${SD(i,o)} ${rd(e,AD(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>He("open",iy)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var SD=(e,t)=>t.find(({of:n})=>n===e.of)===e?s`<h3>${e.of}</h3>`:d,AD=e=>({...e,kind:"mass",when:"base_mixed"});var Ds;function DD(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var mm=e=>`cured.${e}`;function sy(e,t){let{id:n}=e.begun,o=Ds?.batch===n?Ds:{batch:n,day:DD(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:u})=>u===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:d}
    </p>
    ${OD(n).map(FD)}
    ${i.length?s`<ul class="weighings">
            ${i.map(u=>LD(e,u))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${pm("Day","cure-day","date",o.day,u=>({...o,day:u}))}
      ${pm("Pieces","cure-pieces","numeric",o.pieces,u=>({...o,pieces:u}))}
      ${pm(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,u=>({...o,weight:u}))}
      <button type="button" ?disabled=${!l} @click=${()=>PD(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${N(r.on)} already: ${qa(r)}.</p>`:d}
  </div>`}var pm=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?d:n}
      autocomplete="off"
      .value=${P(o)}
      @input=${r=>{Ds=i(r.target.value),Q()}}
    />
  </div>`;function PD(e,{unit:t="g"},n){let o=Oe(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;fo(e,mm(n.day),r),D(`Weighing of ${N(n.day)}: ${r}`),Ds=void 0,Q(),C(L("cure-pieces"))}var OD=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),FD=e=>{let t=N(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${cm(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>MD(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function MD({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Ds={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),C(L("cure-pieces"))}function LD(e,t){let n=hn(e.begun.id,mm(t.on));return s`<li>
    <span><b>${N(t.on)}</b>: ${qa(t)} <span class="stands kept">✓ noted</span></span>
    ${n?d:s`<button
            type="button"
            aria-label="Take back the weighing of ${N(t.on)}"
            @click=${()=>fo(e,mm(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function ay(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?oo(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Qo(n):"";return!r||Ua(e,t.key)||hn(o.id,t.key)?d:s`<p class="read-at-weights">
    <button type="button" @click=${()=>fo(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function ly({to_weights:e,to_learned:t}){mo();let n=Wi();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${a.record.batches.length?s`<p><button type="button" @click=${t}>What your batches say</button></p>`:d}
    ${gm()} ${od()} ${n?CD(n):BD(e)}
  </section>`}function gm(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:d}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
  </div>`}function BD(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function CD(e){return s`<div class="record-head">
      ${nr(e)}
      <p>${Ss(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${im(e)}</b>
      </p>
      ${WD(e)}
      ${sd()?s`<button type="button" @click=${()=>Be(`batch ${e.begun.code}`)}>What is in it</button>`:d}
    </div>
    ${_m(e)}`}function _m(e){let{blanks:t,as_weighed:n=[]}=e;return s`${n.map(({severity:o,text:i})=>s`<p class=${o==="danger"?"alarm":"aside"}>
        ${o==="danger"?s`<strong aria-hidden="true">⚠</strong> `:d}${i}
      </p>`)}
  ${t?jD(e,t):s`<p class="hint">Reading ...</p>`}`}function WD({poured_from:e}){if(e===null)return d;let t=s`Poured from the base <b>${e}</b>`;return sd()&&a.files?.orders.length?s`<button type="button" @click=${()=>{qw(e)}}>${t}</button>`:s`<p>${t}</p>`}var sd=()=>!a.record.run.includes("/"),ID={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},ED="unmoulded_on",fm="Cure and test";function ND(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===ED||o?.title===fm?fm:ID[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function jD(e,t){let n=ND(t),o=s`<nav class="parts-of-record" aria-label="Parts of the record">
    ${n.map((i,r)=>s`<button type="button" @click=${()=>HD(r)}>${dy(i)}</button>`)}
  </nav>`;return s`${n.length>1?o:d} ${n.map((i,r)=>qD(e,i,r))} ${ry(e)}`}var dy=({title:e,of:t})=>t?`${e}: ${t}`:e,hm=e=>`record-part-${e}`;function HD(e){let t=document.getElementById(hm(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var qD=(e,t,n)=>s`<section class="record-part" aria-labelledby=${hm(n)}>
    <h2 id=${hm(n)} tabindex="-1">${dy(t)}</h2>
    ${t.title===fm?UD(e):d} ${t.blanks.map(o=>zD(e,o))}
  </section>`,UD=({for_sale:e})=>e?d:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,zD=(e,t)=>t.kind==="weighing"?sy(e,t):s`${rd(e,t)} ${fc(t)?ay(e,t):d}`;var $m="base-title";function uy({order:e,words:t,planned:n,is_old:o}){let i=Hw(e,t);Vr({run:e,together:i}),JD();let r=Wi();return s`<section class="record of-base out" aria-labelledby=${$m}>
    <h2 id=${$m} tabindex="-1">What really happened: poured together (${i})</h2>
    <p class="aside">
      One base is mixed for these lines, and recorded as a whole. What becomes of their pieces is noted with each run.
    </p>
    ${t.length>1?VD(e,t,i):d} ${gm()}
    ${a.record.version===void 0?KD():s`${QD(n(i),o)} ${od()}`}
    ${r?YD(r):d}
  </section>`}var KD=()=>a.record.failed===void 0?s`<p class="hint">Reading ...</p>`:d;function JD(){a.record.is_led_to&&requestAnimationFrame(()=>{Pe({is_led_to:void 0}),C(L($m))})}var VD=(e,t,n)=>s`<div class="choice" role="group" aria-label="Poured together">
    ${t.map(o=>s`<button
          type="button"
          aria-pressed=${o===n?"true":"false"}
          @click=${()=>em(e,o)}
        >
          ${o}
        </button>`)}
  </div>`;function QD(e,t){return e?e.length?s`<ul class="to-begin">
    ${[...e].sort((n,o)=>n.number-o.number).map(n=>GD(n,e.length,t))}
  </ul>`:s`<p class="aside">Fewer than two of these lines are left to make.</p>`:s`<p class="hint">Which batches there are to begin is known once the order can be planned.</p>`}function GD({number:e,lines:t},n,o){let i=n>1?`batch ${e} of ${n}`:"the base",r=Vt(e),l=()=>C(L("base-head"));return s`<li>
    <p><b>${i[0].toUpperCase()}${i.slice(1)}</b>, for ${t.join(", ")}${r?d:": not begun"}</p>
    ${am({number:e,words:i,is_struck:o,show:l},r?s`Another making than <b>${r.begun.code}</b>`:"Lye is mixed: begin the record")}
  </li>`}function YD(e){let{begun:t,lines:n}=e;return s`<div class="record-head" id="base-head" tabindex="-1">
      ${nr(e)}
      <p>${Ss(e)}</p>
      ${sd()?s`<button type="button" @click=${()=>Be(`batch ${t.code}`)}>What is in it</button>`:d}
    </div>
    ${lm(e)}
    <h3>Poured from it</h3>
    <ul class="poured-lines">
      ${n.map(ZD)}
    </ul>
    ${_m(e)}`}function ZD({id:e,code:t,run:n,file:o,pieces:i}){let{run:r}=a.record,l=r.slice(0,r.lastIndexOf("/")+1)+o,u=a.files?.runs.some(c=>c.file===l);return s`<li>
    <span><b>${t}</b> ${n}, ${z(i,"piece")}</span>
    ${u?s`<button type="button" aria-label="Its record: ${t}" @click=${()=>{li(l,e)}}>
            Its record
          </button>`:d}
  </li>`}var XD=300,eP=1e3,cy=()=>new Date().toDateString(),tP=()=>({file:a.run.file,run:a.run.now});function nP(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,cy()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??tP(),is_open:()=>e===a.run,keep:n=>f({run_days:n})}}function oP(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,Jo(),a.recorded,cy()],is_ready:mn(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await rt(),await ht(),await Ri(),await Va()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>y(e,{days:n})}}var ad=e=>e==="run"?nP():oP(),py=e=>ad(e).question(),my=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function or(e){let t=ad(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=my(n?.of,t.rests_on());!i&&o&&iP(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function ym(e){let t=ad(e);t?.known&&t.keep({...t.known,of:[]})}var bm=new Map,wm=new Set;function iP(e,t){let n=t.rests_on(),o=bm.get(e);wm.has(e)||my(o?.of,n)||(window.clearTimeout(o?.timer),bm.set(e,{of:n,timer:window.setTimeout(()=>{rP(e)},t.known?XD:0)}))}async function rP(e){bm.delete(e);let t=ad(e);if(t?.is_ready){wm.add(e);try{await t.written(),await sP(e,t)}catch(n){if(!(n instanceof w))throw n}finally{wm.delete(e),f({})}}}async function sP(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let u=await Hf(o());i()&&r({of:l,days:u})}catch(u){if(!(u instanceof w))throw u;if(!i())return;r({of:l,days:t?.days,complaint:u.complaint}),u.may_pass&&window.setTimeout(()=>i()&&ym(e),eP)}}var Rm=864e5,To=e=>Math.round(Date.parse(`${e}T00:00Z`)/Rm),fy=e=>new Date(e*Rm).toISOString().slice(0,10),aP=e=>new Date(e*Rm).getUTCDay()===1,km=40,xm=18,lP=7,Tm=class{#n;#e;constructor({calendar:t}){this.#n=To(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(To(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(aP);return t.filter((n,o)=>o%Math.ceil(t.length/lP)===0).map(fy)}is_at_end=t=>To(t)-this.#n>.88*this.#e};function hy(e){let t=new Tm(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${ke(n[0].day)} to ${ke(n.at(-1).day)}</p>
    ${vm(e,t,20,pP(t))}
    <p>Hours of your making days</p>
    ${vm(e,t,km+2,mP(e,t))}
    ${e.batches.map(o=>s`<p>${$P(e,o)}</p>
          ${vm(e,t,xm+6,fP(e,t,o))}`)}
    <figcaption>${wP(e)}</figcaption>
  </figure>`}var vm=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${dP} ${cP(e,t)}
      ${t.mondays().map(i=>R`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${uP(e).map(i=>R`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,dP=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,uP=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),cP=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),pP=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>R`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${x$(t)}</text>`);function mP({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let u=km*l/n;return R`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+km-u} height=${u} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>R`${o("free",i,r)} ${o("used",i,l)}`)}function fP(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=To(_)-To(m);return R`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${xm} />`},u=o===i,c=(p,m)=>_P(e,p,n).map(_=>R`<circle class=${p} cx=${t.at(_,.5)} cy=${3+xm/2} r=${m} />`);return R`${l("mould",o,u?fy(To(o)+1):i)}
    ${To(i)<To(r)?l("cure",i,r):d}
    ${c("chill",7)} ${c("cast",3.5)}`}var hP=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),gP=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function _P(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&hP(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?gP(e,n):[]])]}function $P({asked:e,batches:t},n){let o=({of:l,runs:u})=>l===n.of&&u.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var bP=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,Ps=e=>R`<rect class=${e} x="1" y="1" width="24" height="18" />`;function wP({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,Ps("used"),"hours used"],[!0,Ps("free"),"hours free"],[!0,Ps("mould"),"in the mould"],[!0,Ps("cure"),"curing"],[e.some(({off:i})=>i),Ps("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>bP(i,r))}var di=e=>["/work",e].join("/");function ld(e=!1){let t=(n,o,i,r=!1)=>h({of:"studio",label:o,at:di(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var yP=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${xe(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${xe(n)}</p>`),Os=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${x(t)}</b></td>
    <td>${n}</td>
  </tr>`;function vP(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${x(X(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${ke(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${xe(o)};
      ${S(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Os("Water, distilled",X(t,ae(r,"water_")))}
        ${r.alkalis.map(u=>Os(u.name,X(t,ae(u,""),"down")))}
        ${Os("Lye solution in the pot",X(t,ae(r,"lye_")),l)}
        ${r.shares.map(u=>s`${Os(`Out of it for ${u.batter}`,X(t,ae(u,"lye_"),"down"),`superfat then ${lt(u.superfat_percent)}`)}
            ${u.top_up_g>0?Os(`and plain water to ${u.batter}`,X(t,ae(u,"top_up_"))):d}`)}
      </tbody>
    </table>
    ${yP(e)}`}var gy=({lyes:e})=>e.map(vP),_y=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ui,Fs="",kP=2**20,$y=e=>ui?.of===e.file?{...e,since:{name:ui.name,text:ui.text}}:e;function by(e){let t=async n=>{let o=n.target;await TP(e,o.files?.[0]),o.value=""};return s`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${n=>{t(n)}}
      />
      <p id="earlier-calendar-said" class=${Fs?"complaint":"hint"}>
        ${Fs||"Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${ui?.of===e?xP(ui):d}
  </div>`}var xP=({name:e})=>s`<p role="status">
    The calendar file will cancel what only <b>${e}</b> has.
    <button type="button" @click=${()=>RP(e)}>Leave ${e} out</button>
  </p>`;async function TP(e,t){t&&(Fs=t.size>kP?`${t.name} is too large for a calendar of this program.`:"",ui=Fs?void 0:{of:e,name:t.name,text:await t.text()},D(Fs||`${t.name} is taken into account.`))}function RP(e){ui=void 0,D(`${e} is left out.`),Q()}var ci=e=>y(a.printing,e);function wy(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function yy(e){if(!a.printing.is_working){ci({is_working:!0,told:"Making it ...",on:a.view});try{await SP(),ci({told:await e()})}catch(t){ci({told:t instanceof Error?t.message:String(t)})}ci({is_working:!1})}}async function SP(){await rt(),await ht();let e=a.view==="order"?a.order?.open:void 0,t=Bn("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var Tn=()=>a.printing.on===a.view?a.printing.told:"",Ue=(e,t)=>()=>yy(async()=>{let n=URL.createObjectURL(await dn(t));return wy(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),dd=e=>()=>yy(async()=>(wy(await Jf(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),AP=e=>{ci({paper:e}),localStorage.setItem("paper",e)},ud=()=>ce("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],AP),Me=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,Rn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Me(`${e}, to print`,dd({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Me(`${e}, PDF`,Ue(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,Sn=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var An={run:"/money/currency",studio:"/currency"},cd={run:"/money/prices",studio:"/prices"},sn=()=>bn(An)!==void 0;function ir(){let[e,t]=[g("run",An.run),g("studio",An.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[An,cd]}var pd=()=>O("studio",An.studio)||String(bn(An)??"");async function vy(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=gt(n.now).map(({run:r})=>At(n.file,r)),i=o.find(r=>md(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>md(r,t)))&&await Nn(i,"set-up")}var md=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),ky=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function Ms(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Y(e,n));if(o)return o}}var xy=(e,t)=>{ue("set-up studio"),Ge("studio",e),Xe("set-up"),ky(()=>nt(Ms("studio",t)))};async function Ty(e){await vy(e),le()||await Oa(),xy("days","/days/making/monday")}var DP=["order","run","pour","pipe","studio"];async function fd(e,{file:t,field:n}){if(e==="order"&&md(a.order.open.file,t))return nt(Ms("order",n));await vy(e,t);let o=DP.find(i=>md(ao(i)?.file??"",t));if(o==="pour"||o==="pipe")at(o);else{if(o==="studio")return xy(n.startsWith("/work")&&sn()?"money work":"days",n);if(Ms("run",n))return nt(Ms("run",n));Xe("set-up")}ky(()=>nt(Ms(o??"run",n)))}function hd(e){let{days:t,complaint:n,is_old:o}=or(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?PP(e,n):d}
    ${t?s`<div class=${o?"old":""}>${OP(e,t)}</div>
            ${qP(e,o)}`:n?d:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function PP(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${B(t)}</p>
      <button type="button" @click=${()=>ym(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!le()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{Ty(e)}}>To my making days</button>`:["/work",di("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{fd(e,{...t,field:di("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Jn(n)}${xe(B(t))}</p>
    ${n?s`<button type="button" @click=${()=>{fd(e,t)}}>Go to the field</button>`:d}`}var OP=(e,t)=>s`${jP(t)} ${MP(e,t)} ${FP(t)} ${hy(t)} ${CP(e,t)}
  ${gy(t)} ${EP(t)} ${NP(t)} ${HP(e,t)}`,FP=({asked:e})=>e.flatMap(({ready:t})=>(t?.lines??[]).filter(({text:n})=>n).map(({text:n})=>s`<p><b>${n}</b></p>`)),Sm=(e,t,n)=>s`<small>${e?t:n}</small>`;function MP(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${ke(r)}, promise it for <b>${ke(o)}</b>.
        ${Sm(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>nt(document.getElementById(Y(e,"/due")))}>
        Give it a due day
      </button>`:n?LP(t):BP(t)}function LP({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:u}]=e;return s`<p class="when">
      Begin on <b>${ke(t)}</b> at the latest to have ${z(l,"piece")} by
      <b>${ke(r)}</b>.
      ${Sm(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${u?s`<p>The last day to pour any of it is ${ke(u)}.</p>`:d}
    <p>
      Begun today, all of it can be ready by ${ke(o)}.
      ${i?d:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function BP({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${z(o,"piece")} by ${ke(r)}, the rest on <b>${ke(l)}</b>.`:s`none of the ${z(o,"piece")} by ${ke(r)}, all of them on <b>${ke(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Sm(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var CP=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${ke(n.day)} <small>${WP(n)}</small></h3>
            <ul>
              ${n.acts.map(IP)}
            </ul>
          </li>`)}
    </ol>
  </details>`,WP=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${ul(t)} of ${ul(e)}`:"",IP=({text:e,min:t,caution:n})=>s`<li>
    ${xe(e)}${t?s` <small>${ul(t)}</small>`:d}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:d}
  </li>`;function EP({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${ke(i)} at the latest`:`ready by ${ke(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function NP({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${z(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:d}function jP(e){let t=_y(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${$t}</strong> ${xe(n)}</p>`)}
  </div>`:d}function HP(e,{notes:t,studio:n}){let o=t.filter(({severity:l})=>l!=="danger"),i=({severity:l,text:u})=>l==="note"?s`<p>${xe(u)}</p>`:s`<p class="minded"><strong>Caution</strong> ${xe(u)}</p>`,r=({field:l})=>l?s`<button type="button" @click=${()=>{fd(e,{file:n,field:l})}}>Say it</button>`:d;return o.length?s`<h3>To mind</h3>
        ${o.map(l=>s`<div class="day-note">${i(l)} ${r(l)}</div>`)}`:d}function qP(e,t){let n=py(e),o=Sn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Me("Calendar file (.ics)",Ue(`${o} days.ics`,{kind:"calendar",days:$y(n)}),"",t)}
      ${Rn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Me("Table of the days (.csv)",Ue(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${by(n.file)}
    <p role="status">${Tn()}</p>
  </section>`}var Ro=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,Ls=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function Bs(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,u=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:d}
    @click=${()=>He("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${Ro(e)(u,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:d}`}var Cs=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function gd({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var _d=(e,{items:t},n)=>Cs(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),$d=(e,t)=>Bs(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${UP(t(n),n.cash)} ${zP(n.cash)}`),UP=(e,t)=>s`${Cs(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:d}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:d}`,zP=e=>Cs("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function Ws(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var Ry=e=>`${S(e,1)} %`;function KP(e){return"margin_percent"in e?`margin ${S(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${S(e.markup_percent,2)} %`:"price as set"}var Am=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function bd(e,t,{way:n,by:o,ask:i,with_tax:r},l,u=d){let c=i===r,p=Ro(e),m=b=>Am(n,b),_=(b,v)=>l?s`${v} ${wo(b)}`:v;return s`<tbody>
    ${Ls(s`<span class="way">${n}</span>, ${KP(o)}`,e)} ${u}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(Dm),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):d}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>Ry(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>Ry(b.markup_percent)))}
  </tbody>`}var Dm=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function wd(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Ws(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var Is=e=>e===1?"once":`${e} times`;function Sy({times:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${Is(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        ${JP(e)}
        <tbody>
          ${Ls(yd(e)?"All made anew it would cost":"It costs",e)}
          ${e[0].lines.map((r,l)=>QP(e,l))} ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${$d(e,r=>`made ${Is(r.times)}`)}
        </tbody>
        ${Ws(e).map((r,l)=>bd(e,n,r,l===0,ZP(e,r.way)))}
      </table>
    </div>`}var yd=e=>e.some(({ready:t})=>t.lines.some(({text:n})=>n!==""));function JP(e){if(!yd(e))return d;let t=Ro(e),n=o=>({ready:i})=>i.lines.reduce((r,l)=>r+l[o],0);return s`<tbody>
    ${t("delivered",n("delivered"))} ${t("made already",n("taken"))} ${t("to make",n("to_make"))}
    ${t("What is left to make costs",({rest:o})=>o?o.cost:"nothing")}
    ${t("Materials of what is made already did cost",({ready:o})=>VP(o))}
  </tbody>`}function VP({cost:e,costs_unknown:t}){if(!e)return"nothing is taken";if(!e.materials.length)return"not known";let n=e.materials.map(({amount:o,currency:i})=>`${o} ${i}`).join(" + ");return e.unpriced.length||t.length?`more than ${n}`:n}var Pm=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,QP=(e,t)=>Bs(e,Pm(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${GP(n[t])} ${n[t].parts.map(({part:o})=>YP(n[t],o))}`),GP=e=>Cs(`A piece of ${Pm(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,gd(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),YP=(e,t)=>_d(`${t} of all of them, ${Pm(e)}`,e,t),ZP=(e,t)=>e[0].lines.map(({run:n},o)=>Ro(e)(`${n??""}, a piece`,({lines:i})=>Am(t,Dm)(i[o]))),Ay=({times:e})=>wd(e,t=>`the order loses money, made ${t.map(n=>Is(n.times)).join(", ")}.`);function Dy({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${$t}</strong> ${o}</p>`)}
  </div>`:d}function Py({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?d:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${Ne(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${x(H(a.units,r.make_g))} in
            ${z(r.batches.reduce((l,{count:u})=>l+u,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function XP(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function vd({file:e,question:t,prices:n,is_old:o}){let i=Sn(e),r=XP(n),l={quote:n.length>1&&r?{...t,way:r}:t},u=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${u.length>1?s`<p class="question">The price that is offered</p>
            ${ce("The price that is offered",r,u,p=>y(a.printing,{way:p}))}`:d}
    <div class="choice">
      ${n.length?Rn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):d}
      ${Rn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${Rn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Me("Shopping list, table",Ue(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:d}
    </div>
    ${n.length?r?d:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${Tn()}</p>
  </section>`}var Om=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await eO(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";St(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:d}</p>`,this)}};async function eO(e){try{return[URL.createObjectURL(await dn({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof w))throw t;return["",t.message]}}customElements.define("cost-picture",Om);function Oy(e,t){let{costs:n,currency:o}=e;if(!n.length)return d;let[i,r]=[n[0],n.at(-1)],l=({sell:u,each:c})=>`${c} ${o} at ${u}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Je:Zl()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${tO(e).map(({sell:u,each:c})=>s`<tr>
                <th scope="row">${u}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function tO({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var Fy=({sell:e})=>`${e} to sell`;function My({numbers:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${e.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):d}
        </tbody>
        <tbody>
          ${Ls("A piece costs",e)} ${nO(e).map(r=>oO(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${$d(e,Fy)}
        </tbody>
        ${Ws(e).map((r,l)=>bd(e,n,r,l===0))}
      </table>
    </div>`}var nO=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],oO=(e,t)=>Bs(e,t,n=>gd(n,t),n=>_d(`${t} of the whole run, ${Fy(n)}`,n,t)),Ly=({numbers:e})=>wd(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function By(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${sn()?rO():iO()}
  </section>`}var iO=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Fm()}>To the prices paid</button>`;function Fm(e,t="lane-studio"){ue("set-up studio"),e&&Ge("studio",e),Xe("set-up"),requestAnimationFrame(()=>C(L(t)))}function rO(){let{quote:e,complaint:t,is_old:n}=Gl();return s`${e?s`${sO(e)} ${Ly(e)}`:d}
    <div class="row">${dO(t)}</div>
    ${Mm()?d:Lm(e?.currency,t)} ${t?lO(t):d}
    ${e?mO(e,n):t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function sO({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return d;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${$t}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var aO=["sell","margin","markup","price"],rr=(e,t)=>e?.file===""&&e.field===t?B(e):void 0;function lO(e){return aO.some(t=>rr(e,t))?d:s`<p class="alarm" role="status">${Jn(e.field)}${B(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${Qp}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${Up}>Go to the field</button>`:d}
    ${Hp(e)}`}function kd({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:u}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??d}>${t}</label>
    <input
      id=${e}
      .value=${P(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>u?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:d}
    />
    ${$e(e,r,i)}
  </div>`}function dO(e){let{numbers:t}=a.quote_wish;return kd({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:rr(e,"sell"),take:n=>Fr({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&Fr({numbers:void 0})}})}var uO=()=>le()?Fm("money asking",`${Y("studio","/asking")}-name`):Fm(),Mm=()=>Object.keys(g("studio","/asking")??{}).length>0,cO=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],pO={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Lm(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=pO[n??"price"],l=u=>r&&Oe(u)?`${u.trim()} ${r}`:u;return s`${ce("A price, for this moment",n,cO,u=>{Fr({by:u,figure:""}),C(L("quote-figure"))})}
    ${n?s`<div class="row">
            ${kd({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:rr(t,n),take:u=>Fr({figure:l(u)})})}
          </div>`:d}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${uO}>Keep my ways of selling</button>`}function mO(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:d}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${My(e,t)}
  ${fO(e,t)} ${Oy(e,t)}
  ${vd({file:a.run.file,question:Zl(),prices:e.numbers[0].prices,is_old:t})}`}function fO({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let u=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${u(c.more)}</b></li>`)}
            </ul>
          </details>`:d}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${u(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:d}
  </div>`}function Cy({times:e}){let t=e.flatMap(({times:i,ready:r})=>r.lines.filter(({text:l})=>l).map(({text:l})=>e.length===1?l:`${Is(i)}: ${l}`)),[{ready:n}]=e,o=[...new Set(n.notes.map(({text:i})=>i))];return!t.length&&!o.length?d:s`<div class="ready" role="group" aria-label="Pieces that are made already">
    ${t.map(i=>s`<p><b>${i}</b></p>`)} ${o.map(i=>s`<p>${i}</p>`)}
    ${n.lines.map((i,r)=>gO(i,r))}
    ${yd(e)?s`<p class="hint">${hO}</p>`:d}
  </div>`}var hO="What a piece costs and is asked for goes by all pieces made anew; to lay out is what the rest takes, and what packing all that is not delivered takes.",gO=({batches:e,made_otherwise:t},n)=>t.map(({batch:o,pieces:i,files:r})=>s`<p>
        <button type="button" @click=${()=>Lw(n,[...e.map(l=>l.batch),o])}>
          Take the ${i} of batch ${o} all the same
        </button>
        <small>Made by another ${r.join(", ")}.</small>
      </p>`);function Wy(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${yn(t)} ${vn(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${N(String(n))}`:d}</p>
    ${Bw()} ${mn(t.now)?hd("order"):d}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${mn(t.now)?$O():_O()}
    </section>
    ${mn(t.now)?TO():d} ${xO()} ${kO()}`}var _O=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function $O(){let{quote:e,complaint:t,is_old:n}=Pw();return s`${e?s`${Dy(e)} ${Ay(e)}`:d}
    <div class="row">${bO(t)}</div>
    ${Mm()?d:Lm(e?.currency,t)} ${t?yO(t):d}
    ${e?s`${Cy(e)} ${vO(e)} ${Py(e)} ${Sy(e,n)}
          ${vd({file:pe().open.file,question:Xp(pe()),prices:e.times[0].prices,is_old:n})}`:t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var bO=e=>kd({id:"order-times",label:"How often it is made",value:pe().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:rr(e,"times"),take:t=>y(pe(),{times:t})}),wO=["times","margin","markup","price"];function yO(e){if(wO.some(n=>rr(e,n)))return d;let t=Bt("order");return s`<p class="alarm" role="status">
      ${t?s`${Jn(e.field)}${B(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${td}>Ask again</button>`:t&&$n()?s`<button type="button" @click=${()=>nt($n())}>Go to the field</button>`:d}`}function vO({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:d}function kO(){let{file:e,now:t}=pe().open;if(e.includes("/"))return d;let n=t.id?String(t.id):`file:${e}`;return s`<section class="out" aria-labelledby="got-title">
    <h2 id="got-title">What it got</h2>
    <div class="choice">
      <button type="button" @click=${()=>Be(`order ${n}`,e)}>Its batches and their lots</button>
    </div>
  </section>`}function xO(){let{file:e,now:t}=pe().open,n=Ti(t);if(!n.length)return d;let{made:o,is_old:i}=Ow();return uy({order:e,words:n,planned:l=>o&&(o.together.find(u=>u.word===l)?.batches??[]).flatMap(({numbers:u,lines:c})=>u.map(p=>({number:p,lines:c.map(({run:m,pieces:_})=>`${z(_,"piece")} of ${m}`)}))),is_old:i})}function TO(){let{file:e,now:t}=pe().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${ud()}
    <div class="choice">
      ${Rn({words:"Bench sheets",kind:"sheet",file:`${Sn(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${Tn()}</p>
  </section>`}var RO=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function Iy(){let e=[...a.files?.orders??[]].sort(RO),t=a.new_order.trim(),n=()=>{Te(async()=>{await i$(t),f({new_order:""})})};return s`${Wt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?on(e,SO):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${P(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${It("order")}`}function SO(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":z(t,"piece"),n?`due ${N(n)}`:"",o?`changed ${N(o)}`:""].filter(Boolean);return kn({kind:jo,one:e,facts:i,open:()=>Gt(e.file)})}function Ny(){if(a.view==="order"&&a.order)return Ey(a.order.open);let e=uo();if(e)return Ey(e);let t=AO();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(G(n)||n.theirs||n.failed);return a.view==="formula"&&o?DO():n.theirs?Wm(n):n.failed?Td(`Not saved: ${n.failed}`):G(n)?Cm:xd(n.shipped?Bm:`Saved in ${n.file}`)}function Ey(e){return e.theirs?Wm(e):e.failed?Td(`Not saved: ${e.failed}`):G(e)?Cm:xd(e.shipped?Bm:`Saved in ${e.file}`)}var Bm="Built-in: your first change is saved as a copy.",Cm={words:"Saving ...",is_kept:!1},xd=e=>({words:e,is_kept:!0}),Td=e=>({words:e,is_kept:!1,is_failed:!0}),Wm=e=>Td(Ko(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function AO(){let e=a.formulas.apart?"apart":"run",t=Bn(e);if(t)return Wm(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&G(o)))return a.complaint?.file===""?Td(`Not saved: ${a.complaint.problem}`):Cm}function DO(){let e=a.formulas[a.formula_of];return xd(e?e.shipped?Bm:`Saved in ${e.file}`:"")}function Sd(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="shelf"||e==="trail")return{};if(e==="moulds"&&t)return Rd(t,e$,t$);let r=ct(e)?uo():void 0;return r?Rd({past:jy(r,o),future:jy(r,i)},Nr,zu):ct(e)?{undo:Hr()&&ip,redo:Zu()&&tb}:e==="order"&&n?Rd(n,r$,s$):Rd({past:o,future:i},Nr,zu)}function jy(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var Rd=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Hy={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},PO={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},OO="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",FO="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Im=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${e} />`}</svg>`;function zy(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?d:s`<nav class="rail-lists" aria-label="Lists">
                ${Gf.map(t=>Ky(t,Hy[t],s`${Hy[t]}`))}
              </nav>
              ${LO()}`}
    </div>
    ${e?d:BO()}
  </header>`}var MO={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},Ad=["metric","both","us"],qy={metric:"g",both:"both",us:"oz"},Uy=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function LO(){let e=Ad[(Ad.indexOf(a.units)+1)%Ad.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${Ad.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${Uy(t)}>
            ${MO[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${Uy(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${qy[a.units]}<span
        class="unseen"
        >. Change to ${qy[e]}</span
      >
    </button>`}function BO(){let{undo:e,redo:t}=Sd();return s`<div class="bar">
    ${a.run.file?CO():d}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Im(OO)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Im(FO)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?jO():d}
  </div>`}function CO(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Yf.map(WO)}</div>
  </nav>`}function WO(e){let[t,n]=PO[e],o=IO(e);return Ky(e,o?`${t}, ${o.words}`:t,s`${Im(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:d}`)}function IO(e){if(e==="watch"&&u$())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&EO())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&NO())return{sign:"\u25CB",words:"missing"}}var EO=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>za(e.id)>0),NO=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Ky(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders"||a.view==="trail"&&e==="shelf"||a.view==="learned"&&e==="record";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":d}
    @click=${()=>{Xe(e)}}
  >
    ${n}
  </button>`}function jO(){let{words:e,is_kept:t,is_failed:n}=Ny();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var Jy=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${hd("run")}`;var Em=e=>Pn("GET",`/api/learned?run=${encodeURIComponent(e)}`),Vy=e=>Tt("/api/learned/take",e);var HO=1e3,Gy=()=>[a.run.file,a.plan,a.record.version],qO=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]),sr=e=>f({learned:{...a.learned,...e}});function Yy(){mo();let{learned:e}=a,t=a.record.run===a.run.file&&a.record.version!==void 0&&!a.is_old,n=qO(e.of,Gy());return t&&!n&&!Nm&&UO(),{...e.run===a.run.file?e:{},is_old:!t||!n}}var Dd=()=>sr({of:void 0}),Nm=!1;async function UO(){Nm=!0;try{await zO()}finally{Nm=!1,f({})}}async function zO(){let e=Gy(),t=a.run.file;try{let n=await Em(t);t===a.run.file&&sr({of:e,run:t,kept:n,failed:void 0})}catch(n){if(!(n instanceof w))throw n;if(t!==a.run.file)return;sr({of:e,run:t,failed:B(n.complaint)}),n.may_pass&&window.setTimeout(Dd,HO)}}var KO=()=>G(a.run)||[...fn()].some(G);async function JO(e,t){if(!KO())return[e,t];await rt(),await ht();let n=await Em(a.run.file);return[n.learned?.figures.find(({name:o})=>o===e.name)??e,n]}var Zy=e=>ev(e,"take"),Xy=e=>ev(e,"undo");async function ev(e,t){let{kept:n,doing:o}=a.learned;if(o!==void 0||!n||!e.in_file)return;sr({doing:e.name,said:void 0});let i=a.run.file;try{let[r,l]=await JO(e,n),{file:u}=e.in_file,c=await Vy({run:i,file:u,version:l.versions[u]??"",[t]:r.name});VO(c),Qy(e,`${u} was changed.`)}catch(r){if(!(r instanceof w))throw r;Qy(e,`Nothing was written: ${B(r.complaint)}.`,!0),Dd()}finally{sr({doing:void 0})}}function Qy({name:e},t,n=!1){sr({said:{name:e,words:t,is_refused:n}}),D(t)}function VO(e){for(let t of[a.run,...fn()])t.file===e.file&&eg(t,e);se(),Xa()}function pi(e,t){let{units:n}=a;return e==="mm"?`${t>0?"+":""}${x(_e(n,t))}`:e==="ml"?x(ve(n,t)):e==="g"?x(H(n,t)):e==="g/ml"?`${Ve(t,3)} g/ml`:e==="%"?`${S(t,1)} %`:e==="min"?t<5?`${Ve(t*60,0)} s`:`${Ve(t,0)} min`:S(t,3)}var Pd=e=>e===1?"1 batch":`${e} batches`,tv=e=>e.charAt(0).toUpperCase()+e.slice(1),nv=({figures:e,batches:t})=>e.length?`From ${Pd(t)} recorded beside this run. Only a batch's own notes tell a figure.`:`${Pd(t)} recorded beside this run: a figure is shown once three of them tell it.`;function ov(e,t){let n=`learned-${e.name.replaceAll(/\W/g,"-")}`,{unit:o,value:i,low:r,high:l,values:u}=e;return s`<article class="learned-figure" data-name=${e.name} aria-labelledby=${n}>
    <h3 id=${n}>${tv(e.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${pi(o,i)}</b></p>
      <p>
        between <span class="low">${pi(o,r)}</span> and <span class="high">${pi(o,l)}</span>, from
        <span class="count">${Pd(u.length)}</span>
      </p>
      <p>
        ${e.used_now===null?QO(e):s`The plan uses <b class="used">${pi(o,e.used_now)}</b>.`}
      </p>
    </div>
    ${GO(e)} ${YO(e)} ${XO(e)} ${eF(e,n,t)} ${nF(e)}
    ${oF(e)}
  </article>`}var QO=({unit:e})=>e==="min"?"The studio says nothing of it yet.":"The plan uses none.";function GO({values:e,low:t,high:n,value:o,used_now:i}){let r=[...e.map(m=>m.value),t,n,...i===null?[]:[i]],[l,u]=[Math.min(...r),Math.max(...r)],c=u-l||1,p=m=>6+288*(m-l)/c;return s`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${R`<rect class="range" x=${p(t)} y="6" width=${Math.max(1,p(n)-p(t))} height="18" />
      <path class="told" d="M${p(o)} 3v24" />
      ${i===null?d:R`<path class="used" d="M${p(i)} 1v28" />`}
      ${e.map(m=>R`<circle cx=${p(m.value)} cy="15" r="3" />`)}`}
  </svg>`}function YO({standing:e,in_file:t}){return t?.is_taken?d:e==="stands nowhere"||!t?s`<p class="aside">For you to know: no file has a place for it.</p>`:e==="too few"?s`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`:e==="as planned"?s`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`:t.refused?s`<p class="minded">
        <strong>Cannot be taken:</strong> it ${t.refused.problem}. ${tv(t.refused.remedy)}.
      </p>`:d}var ZO=({of:e,unit:t,now:n,then:o})=>s`<li>
    ${e}: ${pi(t,n)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${pi(t,o)}</b>
  </li>`;function XO({with_it:e,no_plan_with_it:t,in_file:n}){return n?.is_taken?d:t!==void 0?s`<p class="minded"><strong>With it there would be no plan:</strong> ${t}.</p>`:e.length?s`<p>With it:</p>
        <ul class="learned-effects">
          ${e.map(ZO)}
        </ul>`:d}function eF(e,t,n){let{in_file:o,standing:i}=e;if(!o)return d;let{file:r,says:l,would_say:u,is_taken:c,taken:p,refused:m}=o,_=!c&&!m&&i==="suggested",b=n||a.learned.doing!==void 0;return s`${p?tF(p,o):d}
    ${_?s`<p class="in-file">
            In ${r}: ${l??"nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${u}</b>
          </p>`:d}
    <div class="row">
      ${_?s`<button
              type="button"
              class="strong"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{Zy(e)}}
            >
              Take it
            </button>`:d}
      ${p?s`<button
              type="button"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{Xy(e)}}
            >
              Take back
            </button>`:d}
    </div>`}var tF=({on:e,batches:t,before:n,steps:o},{file:i,says:r})=>s`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${N(e)} from ${Pd(t)}: <b>${r}</b> in
    ${i}, and the plan uses it. Before: ${n??"nothing"}${o>1?", which was taken as well":""}.
  </p>`;function nF({name:e}){let{said:t}=a.learned;return t?.name!==e?d:s`<p class=${t.is_refused?"complaint":"hint"} role="status">${t.words}</p>`}var oF=({values:e,unit:t,name:n})=>s`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${n}>
      ${e.map(o=>s`<li>${o.batch}, ${N(o.date)}: <b>${pi(t,o.value)}</b></li>`)}
    </ul>
  </details>`;var iF=({years:e})=>e.map(String).reverse();function iv(e){let t=a.run.file,n=Sn(t),o=i=>({kind:"picture",learned:{file:t,...i}});return s`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${Me("This run",dd(o({})))}
      ${Me("This run, SVG",Ue(`${n} plan against actual.svg`,o({})))}
      ${iF(e).map(i=>s`${Me(`The year ${i}`,dd(o({year:i})))}
          ${Me(`The year ${i}, SVG`,Ue(`${n} ${i}.svg`,o({year:i})))}`)}
    </div>
    <p role="status">${Tn()}</p>
  </section>`}function rv(){let{kept:e,failed:t,is_old:n}=Yy();return s`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    <p><button type="button" @click=${()=>{Xe("record")}}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${t===void 0?d:s`${rF(t)}`}
    ${e?sF(e.learned,n):t===void 0?s`<p class="hint" role="status">Reading ...</p>`:d}
  </section>`}var rF=e=>s`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${e}.</p>
    <button type="button" @click=${Dd}>Ask again</button>`;function sF(e,t){return e?.batches?s`<div class=${t?"old":""}>
    <p class="hint">${nv(e)}</p>
    ${e.figures.map(n=>ov(n,t))} ${aF(e.figures)} ${lF(e)}
    ${dF(e)} ${uF(e)} ${iv(e)}
  </div>`:s`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`}function aF(e){let t=e.some(({level_percent:o})=>o!==null),n=e.some(({level_percent:o})=>o===null);return e.length?s`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${t?"From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. ":d}
    ${n?"Below six, it is from the least to the greatest.":d}
  </p>`:d}var lF=({left_out:e})=>e?s`<p class="aside">
        ${e===1?"1 batch was":`${e} batches were`} of another formula, mould or topping under the same
        name, and ${e===1?"is":"are"} not counted where that matters.
      </p>`:d,dF=e=>e.untold.length?s`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${e.untold.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d,uF=e=>e.contradictions.length?s`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${e.contradictions.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d;function av(e){if(!J$(e))return d;let{whole:t}=e,{batches:n}=t.pieces,o=Ye(t)?`${z(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${sv(e,"pour","The base, whole run")}
      ${t.pipe?sv(e,"pipe","The topping, whole run"):d} ${cF(e)}
    </div>
  </section>`}function sv(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...mb(i),...Tl(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:u})=>Od(`${t}.ingredients.${u}.g`,l.name,si(a.units,l)))}
    ${Od(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",H(a.units,i.make_g))}
  </div>`}var Od=(e,t,n)=>I({key:`needs.${e}`,label:t,shown:n,of:e});function cF(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((u,c)=>({layer:r,one:u,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return d;let i=r=>X(a.units,ae(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:u,j:c})=>Od(`pour.layers.${u}.colours.${c}.g`,`${l.name}, for ${r.name}`,si(a.units,l)))}
    ${o.map((r,l)=>Od(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function lv(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,u=r?"A bar on average, ":"",c=p=>u?u+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${I({key:"piece.fresh",label:c("Fresh"),shown:H(a.units,n),of:"piece.fresh_g"})}
      ${o===null?d:I({key:"piece.cured",label:c("Cured"),shown:H(a.units,o),of:"piece.cured_g"})}
      ${r?I({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:H(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):d}
      ${i===null?d:I({key:"piece.label",label:"Net weight for the label",shown:H(a.units,i,0),of:"piece.label_g"})}
      ${l?I({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):d}
      ${t&&t.amount!==null?s`${I({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:d}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${jm(e)}
    </section>
    ${By()} ${av(Qi(e))}`}function jm(e){let t=e.label;if(!t)return d;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:d;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[uv,qm]=[440,270],[Es,Hm,Fd,ar]=[64,uv-10,10,qm-52],pF=6,mF=8;function dv(e){let t=e/pF,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var lr=e=>S(e,1);function cv(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=u=>lr(Es+(Hm-Es)*u/n),r=u=>lr(ar-(ar-Fd)*u/o),l=e.map(({depth_mm:u,volume_ml:c})=>`L${i(u)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${uv} ${qm}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${dv(n).map(u=>R`<path class="grid" d="M${i(u)} ${Fd}V${ar}" />
            <text x=${i(u)} y=${ar+20} text-anchor="middle">${lr(u)}</text>`)}
      ${dv(o).map(u=>R`<path class="grid" d="M${Es} ${r(u)}H${Hm}" />
            <text x=${Es-8} y=${r(u)} text-anchor="end" dominant-baseline="middle">${lr(u)}</text>`)}
      ${R`<text x=${(Es+Hm)/2} y=${qm-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Fd+ar)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Fd}V${ar}" />`}
    </svg>
    ${fF(e)}`}function fF(e){let t=Math.max(1,Math.round(e.length/mF)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${lr(o)}</th>
              <td>${lr(i)}</td>
              <td>${S(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Md=Math.PI/8,hF=500,Um=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#u=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#d(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#u),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#d(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#u),this.#u=window.setTimeout(()=>{this.#p()},hF))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await dn(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(Mi(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#d()}}#_(t){t(),this.#a="Drawing ...",this.#d(),this.#p()}#d(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;St(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Md)}>Turn left</button>
        <button type="button" @click=${t(Md)}>Turn right</button>
        <button type="button" @click=${n(Md)}>From above</button>
        <button type="button" @click=${n(-Md)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:d}`}};customElements.define("solid-panel",Um);function pv(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${I({key:"mould.brimful",label:"To the brim",note:`${x(_e(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ve(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    ${Wl(Wb(t.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${cv(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${gF(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:d}
  </section>`}function gF(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var _F=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function mv(e){let{batch:t}=a.printing;return Ye(e)&&t<=e.pieces.batches?t:0}function $F(e){if(!Ye(e))return d;let t=mv(e),n=i=>ci({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${P(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${_F(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${nn(e,r)}`))}
      </select>
    </div>
  </div>`}function fv(e){let{paper:t}=a.printing,n=Sn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=mv(e),u={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ud()} ${$F(e)}
    <div class="choice">
      ${Rn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:u},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Me("Label draft",Ue(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Me("Drawing of the pour, true size",Ue(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Me("Drawing of the piece",Ue(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Me("Whole piece, GLB (3D viewer)",Ue(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Me("Whole piece, STL (3D printing)",Ue(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Me("Filled cavity, GLB (3D viewer)",Ue(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Me("Cavity, STL (3D printing)",Ue(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${Tn()||`The drawing has the pour line ${x(_e(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var hv=e=>fv(e);var je={at:"/decorations"},dr=e=>`${je.at}/${e}`,So=e=>O("run",`${dr(e)}/name`).trim()||`Decoration ${e+1}`,dt=()=>$(a.run.now,"/cut")!==void 0,mi=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),Ns=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var xt="/batch",gv=e=>`${e}/moulds_owned`;function zm(){return F({name:"batches",pointers:[xt],summary:`Batches${bF()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${W("run",xt)}
        <div class="row">${wF()} ${vF()}</div>
        ${A({question:"Cavities at each filling",at:xt,asked_at:`${xt}/fill`,chosen:g("run",`${xt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>_v("fill",e==="full"?e:void 0)})}`})}function bF(){let[e,t]=[`${xt}/pieces`,`${xt}/casts`].map(o=>O("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function _v(e,t){let n=ge("run",xt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function wF(){let e=g("run",`${xt}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${xt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return dt()?g("run",`${xt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${yF}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function yF(){q("run","Counted in loaves",xt,_v("pieces",void 0))}function vF(){let e=`${xt}/whippings`;return!yt()&&g("run",e)===void 0?d:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var kF={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Et={at:"/dust"},Ld=e=>O("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function $v(){ue("set-up dust"),U(Et,{name:""},"Dust")}function xF(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function bv(e){let t=`/dust/${e}`,n=xF(t),o=Ld(e),i=r=>({...ge("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...kF[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${A({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):d}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:d}
  ${vo("run",t,o)}`}var TF={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function RF(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function wv(e,t){let n=RF(e),o=i=>({...ge("run",e,["on_top","buried"]),...TF[i]});return mi(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:mi(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:F({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${A({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?SF(`${e}/on_top`):n==="buried"?DF(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function SF(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${yv(e,"It is turned")}`}function yv(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return F({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var AF=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function DF(e,t){let n=`${e}/buried`,o=t===k(je).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${W("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${A({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${A({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:AF,puts:l=>OF(e,l)})}
  ${i==="said"?MF(e,t):d}`}var PF=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${R`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,vv={x:"",y:"",height:""};function OF(e,t){let n=ge("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${Ns(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>vv);return{...ge("run",e,["per_piece","per_cast"]),[kv(e)]:i.length,buried:{...n,places:i}}}var kv=e=>dt()?"per_cast":Ns(e)??"per_piece";function FF(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>M(r,`${e}/${l}`,void 0),n);return M(i,`${e}/${kv(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function MF(e,t){let n=FF(e),o=k(n);return s`${PF()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,u=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${E(n,r)} role="group" aria-label="Place ${r+1} of ${So(t)}">
        ${W("run",l)}
        <div class="row">
          ${u("x")} ${u("y")} ${u("height")} ${J(n,r,`place ${r+1} of ${So(t)}`)}
        </div>
        ${yv(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${ee(n,"Add a place",()=>U(n,vv,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Tv=e=>`${e} made`;function LF(){let e=dr(k(je).length),t=dt()?{}:{per_piece:""};ue("set-up decorate");for(let n of[Tv(e),`${e} where`])Ge("run",n);U(je,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Rv(){let[e,t]=[k(je).length>0,k(Et).length>0];return s`${ee(je,e?"Add another decoration":"Add a decoration",LF)}
  ${ee(Et,t?"Add another dust":"Add a dust",$v)}`}function Sv(e){let t=dr(e);return s` ${W("run",t)} ${EF(t)}
    <div class="row">
      ${CF(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${mi(t)==="bought"?d:BF(t)}
    </div>
    ${wv(t,e)} ${vo("run",t,So(e))}`}var BF=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function CF(e){let t=Ns(e),n=te("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(dt()&&t==="per_piece"))return s``;let o=t==="per_cast"?dt()?"In each loaf":"In each cast":dt()?"On each bar":"On each piece",i=r=>({...ge("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${dt()?A({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):d}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):d}`}var WF={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},xv={density:"",melt_loss:"",left_in_jug:""};function IF(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(xv),"time_per_tray_fill"]:[]],o=mi(e)==="bought"&&t!=="bought"?xv:{};return{...ge("run",e,n),...o,...WF[t]}}function EF(e){let t=mi(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return F({name:Tv(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${A({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>IF(e,o)})}
        ${t?NF[t](e):d}
        ${t==="bought"?d:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var NF={mould:jF,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function jF(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${Ki("Cast in",`${e}/mould`,a.files?.moulds)}
  ${A({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${A({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Nt=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],ne=e=>a.fats.find(t=>t.id===e)?.name??e,Km=8;function fi({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,u=a.finding?.key===e?a.finding.text:"",c=(u.trim()?HF(u,o):n).filter(v=>!i(v)),p=v=>{f({finding:void 0}),r(v)},m=u.trim(),_=m!==""&&!i(m)&&!c.some(v=>tt(ne(v))===tt(m)),b=()=>{if(!m)return;let v=c.find(V=>tt(ne(V))===tt(m)||tt(V)===tt(m)),T=c.length===1?c[0]:void 0;(v??T??_)&&p(v??T??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${u}
        @input=${v=>f({finding:{key:e,text:v.target.value}})}
        @keydown=${v=>{v.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,Km).map(v=>s`<button type="button" @click=${()=>p(v)}>${ne(v)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:d}
    </div>
    ${c.length>Km?s`<p class="hint">${c.length-Km} more: type a part of the name.</p>`:d}
  </div>`}function HF(e,t){let n=t?[]:Nt(),o=tt(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>Hn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(u=>tt(ne(l)).includes(u));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var Vn="/packaging",ur={at:Vn,stays:!0},Av={material:"",each_piece:""},qF={studio:void 0,own:[Av],nothing:[]},UF=()=>g("run",Vn)===void 0?"studio":k(ur).length?"own":"nothing";function Jm(){let e=UF();return F({name:"packaging",pointers:[Vn],summary:`Packaging${zF(e)}`,body:()=>s`${A({question:"What goes round each piece",at:Vn,is_told_elsewhere:e==="own",chosen:e,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:t=>qF[t],then:t=>t==="own"?`${Vn}/0/material`:Vn})}
      ${e==="own"?KF():d}`})}function zF(e){if(e==="studio")return"";if(e==="nothing")return": none";let t=te("run",Vn).map(({material:n})=>ne(String(n??""))).filter(Boolean);return t.length?`: ${t.join(", ")}`:""}var KF=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(ur).map((e,t)=>{let n=String(e.material||`packaging ${t+1}`);return s`<div class="row" id=${E(ur,t)}>
        ${h({label:`Material ${t+1}`,at:`${Vn}/${t}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${t+1}`,at:`${Vn}/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${J(ur,t,n)}
      </div>`})}
    ${ee(ur,"Another material",()=>U(ur,Av,"A material"))}`;function Dv(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!yt()?d:s`<div class="labelled">
      ${Hc(e,"Make one pot of lye solution for both",t,{})}${qn("lye_solution")}
    </div>
    ${Zt("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):d}`}function Pv(e){let t={at:"/bottles"},n=k(t);return F({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&be(e)?` Weights are of ${be(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${E(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${J(t,i,l)}
            </div>
            ${W("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?JF(e,i,l):d}
          </div>`})}
        ${ee(t,"Use up a bottle",()=>U(t,{name:"",holds:""},"bottle"))}`})}function JF(e,t,n){let o=e.bottles?.[t];return o?.name!==n?d:o.parts.map((i,r)=>I({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:X(a.units,ae(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var js="/label",Qm=()=>g("run",js)!==void 0;function Ov(){let t=g("studio",cr.studio)!==void 0?{weight_spread:""}:{market:""};ue("set-up label"),q("run","Label added",js,t,L("lane-label"))}function Fv(){return s`${W("run",js)} ${VF()}
    <button type="button" @click=${()=>q("run","Label removed",js,void 0)}>Remove the label</button>`}var cr={run:"/label/market",studio:"/label/market"};function Gm(){let{of:e,at:t}=as(cr);return s`${A({of:e,question:"Where it is sold",at:e==="run"?js:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?QF(n):n})}
  ${yo("Where it is sold",[cr])}`}function VF(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Gm()}
  ${A({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:GF})}
  ${e==="weighed"?YF():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${bn(cr)==="EU"||g("run",Vm)!==void 0?Hc(Vm,"With the e mark",g("run",Vm)===!0,!0):d}`}var Vm="/label/e_mark";function QF(e){return{...ge("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function GF(e){let t=ge("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function YF(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more piece",()=>U(e,"","piece"))}`}function Mv(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${ep(e)?`${c.count} of `:""}${nn(e,c)}`),l=`Made in ${t} batches${ep(e)?": ":" of "}${Ne(r)}; ${bl(n,o)}.`,u=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ye(e)?s`<p><b>${l}</b></p>`:d}
    ${i>0?s`<p>
            ${z(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:d}
    ${u.length?s`<p><span class="called">What sets a batch:</span> ${u.map(c=>c.text).join(" ")}</p>`:d}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:d}
  </div>`}var Lv=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Bv(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?Ev(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,u=e.pipe?ZF(e,t,n,l):0;return{brim:n,line:o,topping:u,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+u+l)}}function ZF(e,t,n,o){let i=Yt($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,u]=tc(t,t.brim-.01),c=Math.PI/4*(u-l)**2;return 1500*e.pipe.visible_each_ml/c}function Ym(e,t){let[n,o]=tc(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),u=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let v=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${v} ${u(m)} ${v} ${u(_)} ${i+b*l(_)*(_?.94:1)} ${u(_)}`},p=`M${n} ${u(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${u(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Hs=(e,t)=>e===t?`shaded ${t}`:"plain";function Ao(e,t,n=d){return s`${Cv(e,t,n)}
  ${e==="decorate"&&Zm(t)?s`<p class="hint">${Zm(t)}</p>`:d}`}var Do=(e,t)=>s`<div class="small-view">${Cv(e,t,d)}</div>`;function Cv(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Bv(t,o),r=o.right-o.left,l=Math.max(6,r*.1),u={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${u.x} ${u.y} ${u.w} ${u.h}" role="img" aria-label=${lM(e,t)}>
      ${XF(e)} ${eM(e,t,o,i)} ${nM(e,t,o,i)} ${oM()}
      ${iM(e,t,o,i)} ${aM(e,t,o,i)}
      ${R`<line class="pour-line" x1=${u.x+1} x2=${u.x+u.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${u.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${u.x+u.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Wv(e,t){let n=a.measured.outline,o=Bv(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function XF(e){return R`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Lv(Iv())} /></clipPath>
  </defs>`}function Iv(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function eM(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(u=>tM(u,n)):[[o.line,o.line]]).map(([u,c])=>`M${n.left} 0V${-u}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${e})">${l.map((u,c)=>R`<path class="whole" d=${u} /><path class="${Hs(i,"pour")} band${c%3}" d=${u} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${e})" d=${u} />`:d}`).reverse()}</g>`}function tM(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function nM(e,t,n,o){if(!t.pipe||o.line>=o.brim)return d;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${e})"><rect class=${Hs(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function oM(){return R`<path class="wall" fill-rule="evenodd" d=${Lv(Iv())} />`}function iM(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((u,c)=>(u.buried?.embeds??[]).map(p=>({embed:p,one:u,i:c})))??[];return R`
    ${t.pipe?R`<path class=${Hs(e,"pipe")} d=${Ym(n,o)} />${e==="pipe"?R`<path fill="url(#dots-pipe)" d=${Ym(n,o)} />`:d}`:d}
    ${e==="dust"?rM(t,n,o):d}
    ${o.ball?R`<circle class=${Hs(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:d}
    ${l.map(({embed:u,one:c,i:p})=>sM(Hs(e,"decorate"),i,u,c,p))}`}function rM(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return R`<path class="powder" d=${e.pipe?Ym(t,n):o} />`}function sM(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],u=Yt($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Yt($(a.run.now,`/decorations/${i}/rod/length`));if(!u||!c)return R`<circle class=${e} cx=${r} cy=${-l} r=${Ev(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=u/2*Math.sqrt(1-_*_),v=c*_+2*b,T=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${e} x=${-v/2} y=${-u/2} width=${v} height=${u} rx=${b} ry=${b?u/2:0}
    transform="translate(${r} ${-l}) rotate(${T})" />`}var Ev=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Zm(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function aM(e,t,n,o){if(e!=="cut"||!t.cut)return d;let i=Math.max(t.cut.rows,t.cut.columns);return R`${Array.from({length:i-1},(r,l)=>{let u=n.left+(n.right-n.left)*(l+1)/i;return R`<line class="knife" x1=${u} x2=${u} y1=${-o.line} y2="0" />`})}`}function lM(e,t){let n=x(_e(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Zm(t)}`.trim()}var dM=e=>`set-up ${e}`;function ut({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=dM(e),u=()=>Lt({part:t,fold:l},r);if(Un())return s`${u()}`;i.some(([m,_])=>Qe(m,_))&&ue(l);let c=a.open.has(l),p=zi().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?d:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:d}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>He("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${u()}</div>`:d}
  </section>`}var Re=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var Nv=()=>k(je).length>0,jv=()=>k(Et).length>0;function Hv(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function qv(e){let t=e?k(je).flatMap((n,o)=>Kv(e,o)??[]):[];return ut({name:"decorate",title:"Decorate",drawing:e&&(()=>Do("decorate",e)),result:t.length?t.map(n=>pM(e,n)):Re(Uv(je,So)),about:[["run",je.at]],form:()=>s`${e?s`<div class="side">${Ao("decorate",e)}</div>`:d}
        <div class="weights">${e?k(je).map((n,o)=>uM(e,o)):d}</div>
        ${Jv(je,So,Sv)}`})}var Uv=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function uM(e,t){let n=Kv(e,t);return n?mM(e,n,t):d}function zv(e){let t=e?.dust?.length?k(Et).map((n,o)=>hM(e,o)):void 0;return ut({name:"dust",title:"Dust",drawing:e&&(()=>Do("dust",e)),result:t??Re(Uv(Et,Ld)),about:[["run",Et.at]],form:()=>s`<div class="side">${e?Ao("dust",e):d}</div>
        <div class="weights">${e?k(Et).map((n,o)=>gM(e,o)):d}</div>
        ${Jv(Et,Ld,bv)}`})}var Kv=(e,t)=>Hv(e.decorations,k(je),O("run",`/decorations/${t}/name`),t);function Jv(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${E(e,i)} aria-labelledby="${E(e,i)}-title">
          <div class="part-head">
            <h3 id="${E(e,i)}-title">${t(i)}</h3>
            ${J(e,i,t(i))}
          </div>
          ${Lt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function cM(e,t){return s`<h3>${e.name}</h3>
    ${I({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function pM(e,t){if(t.bought)return Re(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=x(X(a.units,ae(t,"make_")));return Re(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ye(e.whole)?", for the whole run":""}.`)}function mM(e,t,n){return t.bought?cM(t,n):s`<h3>${t.name} ${Ye(e.whole)?s`<small>for the whole run</small>`:d}</h3>
    ${I({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:X(a.units,ae(t,"make_")),of:`decorations.${n}.make_g`})}
    ${I({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(t.volume_each_ml,2)} ml`,shown:H(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${bo(t.casting_s)} of casting.</p>`:d} ${fM(t,n)}`}function fM(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return d;let i=l=>l===null?"not known":x(_e(a.units,l)),r=l=>{let u=(o?.embeds??[]).map(l).filter(c=>c!==null);return u.length?x(_e(a.units,Math.min(...u))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:d}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${S(o.displaced_ml,1)} ml</dd>
              </div>`:d}
    </dl>
    ${ei(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function hM(e,t){let n=Vv(e,t);if(!n)return d;let o=be(e);return Re(s`<b>${x(X(a.units,ae(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Vv=(e,t)=>Hv(e.dust,k(Et),O("run",`/dust/${t}/name`),t);function gM(e,t){let n=Vv(e,t);if(!n)return d;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=I({key:`set-up.dust.${t}`,label:n.name,note:be(e),shown:X(a.units,ae(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:d}`}function Qv(e){let t=e?.cut;return ut({name:"cut",title:"Cut",drawing:e&&(()=>Do("cut",e)),result:t?_M(e,t):Re("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?$M(e,t):d}
        <div class="all-questions">${Hb()}</div>`})}var _M=(e,t)=>Re(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${x(H(a.units,e.piece.fresh_g))} on average, fresh.`);function $M(e,t){return s`<div class="side">${Ao("cut",e)}</div>
    <div class="weights">
      ${I({key:"cut.bar",label:"A bar on average, fresh",note:bM(t),shown:H(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${I({key:"cut.offcuts",label:"Offcuts",shown:H(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${wM(t)}
    </div>`}function bM(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function wM(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:d}function Gv(e){return ut({name:"label",title:"Label",drawing:vM,result:Re(yM(e)),about:[["run","/label"]],form:()=>s`<div class="more">${Fv()} ${e?jm(e):d}</div>`})}function yM(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${x(H(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var vM=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Qn=e=>h({...e,of:"studio"});function Yv(){let e=(t,n,o)=>F({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${fe("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",RM)} ${e("/blends","Melted blends of fats",DM)}
    </div>
  </section>`}var kM=["/prices","/packs","/have","/waste"],xM=e=>(t,n)=>kM.reduce((o,i)=>$(o,`${i}/${j(e)}`)===void 0?o:us(o,i,e,n),t);function TM(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let u=$(r,l);return u===void 0?r:M(r,l,n(u))},i)}function Zv({at:e,name:t,label:n,body:o}){let i=(l,u)=>Kt([["studio",l],["run",TM(t,u)]]),r=`${e}/${j(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${oi("studio",e,t)}
    </div>
    ${W("studio",r)}
    <div class="row">${ds({of:"studio",at:e,name:t,label:n,also:xM(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Qn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Qn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Qn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var pr="/lye_solutions",RM=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${fe("studio",pr).map(e=>Zv({at:pr,name:e,label:"What you call it",body:SM(e)}))}
    ${Vi({of:"studio",at:pr,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>oe("studio",`${pr}/${j(e)}/alkali`)})}`;function SM(e){let t=`${pr}/${j(e)}`,n=O("studio",`${t}/alkali`),o=n||"alkali",i=O("studio",`${t}/strength`);return s`${A({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Qn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Qn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${AM(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Qn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Qn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${W("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${ot({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Qn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function AM(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var qs="/blends",DM=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${fe("studio",qs).map(e=>Zv({at:qs,name:e,label:"What you call it",body:PM(e)}))}
    ${Vi({of:"studio",at:qs,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>L(`find-blend ${e}`)})}`;function PM(e){let t={of:"studio",at:`${qs}/${j(e)}/fats`,stays:!0},n=k(t),o=i=>n.some(r=>r.fat===i);return s`${W("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${E(t,r)}>
        ${Qn({label:ne(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${J(t,r,ne(String(i.fat)))} ${W("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${Yi("Its fats",n.map(i=>i.share))}
        </p>`:d}
  ${fi({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:OM(),among:"fats",taken:o,take:i=>U(t,{fat:i,share:""},ne(i))})}`}var OM=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Xv=e=>k({of:"studio",at:`${qs}/${j(e)}/fats`}).map(({fat:t})=>String(t)),mr=e=>{let t=g("studio",`${pr}/${j(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Us=e=>`/${e}/lye_from`,zs=e=>`/${e}/blend`;function Ks(e){let t=fe("studio","/lye_solutions").length>0||g("run",Us(e))!==void 0,n=fe("studio","/blends").length>0||g("run",zs(e))!==void 0;if(!t&&!n)return d;let o=[...ek(e),tk(e)].filter(Boolean).join(", ");return F({name:`/${e} ready`,pointers:[Us(e),zs(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?MM(e):d} ${n?BM(e):d}`})}function ek(e){let t=g("run",Us(e));return typeof t=="string"?[t]:te("run",Us(e)).map(String)}var FM=e=>te(e,"/alkali").map(t=>String($(t,"/alkali")));function MM(e){let t=Us(e),n=Y("run",t),o=ek(e),i=FM(e),r=[...new Set([...fe("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(mr(m).alkali)),u=r.filter(m=>!l.includes(m)),c=Fe("run",t),p=m=>{let{alkali:_}=mr(m),b=o.includes(m),v=o.filter(ze=>ze!==m&&(b||mr(ze).alkali!==_)),T=b?v:[...v,m],V=T.length>1?T:T[0];q("run",`${m}: ${b?"no":"yes"}`,t,V)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ne(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${mr(m).words}
          </button>`)}
    </div>
    ${$e(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${u.length?s`<p class="hint">Of another alkali than this formula's: ${u.map(m=>mr(m).words).join(", ")}.</p>`:d}
  </div>`}var tk=e=>{let t=g("run",zs(e));return typeof t=="string"?t:O("run",`${zs(e)}/name`)};function LM(e,t){let n=te(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:u})=>u===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return Xv(t).every(r=>i.has(r.toLowerCase()))}var Xm="\0singly";function BM(e){let t=zs(e),n=tk(e),o=[...new Set([...fe("studio","/blends"),...n?[n]:[]])],i=o.filter(u=>u===n||LM(e,u)),r=o.filter(u=>!i.includes(u)),l=g("run",`${t}/share`)!==void 0;return s`${A({question:"Blend of fats that is weighed",at:t,chosen:n||Xm,answers:[[Xm,"None: each fat by itself"],...i.map(u=>[u,u])],puts:u=>u===Xm?void 0:u,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>q("run","Its share",t,{name:n,share:""},oe("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:d}`}var Oo="/pour/layers",Po={at:Oo,in_order:!0},ef=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Cd=()=>k(Po);function CM(){let e=t=>Cd().some(n=>t in n);return ef.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function ok(e){let t=Cd(),n=CM();return t.length?s`<h3>
      Layers, lowest first ${e&&be(e)?s`<small>${be(e)}</small>`:d}
    </h3>
    ${A({question:"All of them by",at:Oo,is_told_elsewhere:!0,chosen:n,answers:ef,puts:o=>IM(o,e)})}
    <div class="items">${t.map((o,i)=>EM(o,i,n,e))}</div>
    ${ee(Po,"One more layer on top",()=>U(Po,{name:WM(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${ee(Po,"Pour it in layers",()=>U(Po,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function WM(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function ik(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function IM(e,t){let n=Cd(),o=a.is_old?void 0:t,i=(r,l)=>{let u=ik(o,r,l);return e==="parts"||!u||e==="depth"&&"tilted"in r?"":e==="depth"?`${S(u.to_mm-u.from_mm,3)} mm`:`${S(u.mass_each_g,3)} g`};return n.map((r,l)=>{let u=Bd(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...u,...c?{rest:!0}:{[e]:i(r,l)}}})}var Bd=e=>ge("run",`${Oo}/${e}`,[...ef.map(([t])=>t),"rest"]);function EM(e,t,n,o){let i=`${Oo}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=ik(o,e,t);return s`<div class="part" id=${E(Po,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?NM(o,l,t):s`<p class="part-title">${r}</p>`} ${W("run",i)}
    ${HM(e,t,n,r)}
    ${o&&l?l.colours.map((u,c)=>jM(o,u,t,c)):d}
    ${F({name:i,pointers:["name","colours","tilted"].map(u=>`${i}/${u}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${KM(i,r)} ${JM(i,t)}
        ${J(Po,t,r)}`})}
  </div>`}function NM(e,t,n){return I({key:`pour.layer.${n}`,label:t.name,note:`${Bc(_e(a.units,t.to_mm-t.from_mm))} thick, ${Bc(H(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?H(a.units,t.g):X(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function jM(e,t,n,o){return I({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${S(t.teaspoons,1)} tsp`:"",shown:si(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function HM(e,t,n,o){if(n==="parts")return qM(e,t,o);let i="rest"in e;return s`${i?d:h({label:`${o}, ${n}`,at:`${Oo}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?zM(t,n):UM(t,n)}
    >
      Takes the rest
    </button>`}function qM(e,t,n){let o=`${Oo}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function UM(e,t){let n=Cd().map((o,i)=>i===e?{...Bd(i),rest:!0}:o.rest?{...Bd(i),[t]:""}:o);q("run","takes the rest",Oo,n)}function zM(e,t){let n=`${Oo}/${e}`;q("run","amount of the layer",n,{...Bd(e),[t]:""},oe("run",`${n}/${t}`))}function KM(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${E(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${J(n,i,l)}
      </div>
      ${W("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${vo("run",r,l)}
    </div>`})}
  ${ee(n,"Add a colour",()=>U(n,{name:"",rate:""},"colour"))}`}var nk=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function JM(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(Po).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:ot({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${A({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:nk,puts:r=>r})}
        ${F({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!nk.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var an=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function tf(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=an()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${an()}`,`${S(i,2)} mm`)}function rk(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Yt($(a.run.now,`/pour/line/${an()}`));return n===void 0?e.pour.below_brim_mm:an()==="depth"?t-n:n}function VM(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function QM(e){if(!a.measured)return d;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=rk(e),{share:o,h:i}=Wv(e,t-n),r=c=>VM(c,p=>tf(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),tf(e,n+p))},u=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>u(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${x(_e(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function GM(e){let{pour:t}=e,n=x(_e(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=be(e);return Re(s`${o}, <b>${x(H(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${x(H(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var sk=()=>an()==="depth"?"Depth":"Below brim";function ak(e){return ut({name:"pour",title:"Pour",drawing:e&&(()=>Do("pour",e)),result:e?GM(e):Re(`${YM()}.`),about:[["run","/pour"]],form:()=>s`${e?ZM(e):XM()}
        <div class="more">
          ${Wd("pour")} ${Ks("pour")} ${ok(e)} ${Ol("pour")}
        </div>`})}function YM(){let e=O("run",`/pour/line/${an()}`);return e?`${e} ${an()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function ZM(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>tf(e,rk(e)+i);return s`<div class="side">
      ${Ao("pour",e,QM(e))} ${lk(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:sk(),at:`/pour/line/${an()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${I({key:"pour.each",label:"Weigh into each",shown:H(a.units,t.mass_each_g),note:`${S(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${I({key:"pour.mm",label:"1 mm more or less",shown:ve(a.units,t.ml_per_mm,2),note:`${Ve(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${I({key:"set-up.pour.make",label:"Base to make",note:be(e),shown:H(a.units,t.make_g),of:`${n}.make_g`})}
      ${I({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var XM=()=>s`<div class="side">
    ${lk()} ${W("run","/pour/line")}
    ${h({label:sk(),at:`/pour/line/${an()}`,unit:"mm"})}
  </div>`,Wd=e=>s`<button type="button" @click=${()=>at(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function lk(e){let t=n=>{if(n===an())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;q("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return ce("The pour line is measured",an(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var eL=[0,50,80,100];function dk(e){let t=e?.pipe;return ut({name:"pipe",title:"Pipe",drawing:t&&(()=>Do("pipe",e)),result:t?tL(e,t):Re("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?nL(e,t):oL()})}function tL(e,t){let n=be(e);return Re(s`Pipe <b>${S(t.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,t.mass_each_g))} at this
      whipped density; make <b>${x(H(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function nL(e,t){return s`<div class="side">
      ${Ao("pipe",e)}
      ${I({key:"pipe.each",label:"Topping on each",shown:ve(a.units,t.volume_each_ml),note:`${S(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${I({key:"set-up.pipe.make",label:"Topping to make",note:be(e),shown:H(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${I({key:"pipe.density",label:"Whipped density",note:`overrun ${S(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Wd("pipe")} ${Ks("pipe")}
    </div>
    <div class="weights">${kp(t)} ${mk()} ${iL(e)} ${uL(e)}</div>
    <div class="more">${vp(t)} ${yp()}</div>`}var Js=e=>e===0?"pipe":`pipe.whipping${e}`,Vs=(e,t)=>`${e.place}.pipe.whippings.${t}`;function uk(e,t){let n=$l(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:d}function oL(){return s`<div class="more">${vp()}</div>
    <div class="side">${mk()} ${g("run","/pipe/whip_now")===void 0?d:pk()}</div>
    <div class="weights">${kp()} ${Wd("pipe")} ${Ks("pipe")}</div>
    <div class="more">${yp()}</div>`}var ck=e=>be(e)?s`<small>${be(e)}</small>`:d;function iL(e){return s`<h3>Today's bowl ${ck(e)}</h3>
    ${pk()} ${e.whippings.map((t,n)=>rL(e,t,n))}`}function rL(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${uk(e,t)}
  ${o==null?d:I({key:`${Js(n)}.now`,label:"Enough for",note:r,shown:[z(o,"piece"),""],size:"weigh",of:`${Vs(e,n)}.pieces_now`})}
  ${aL(e,t,n)}`}function pk(){let e=g("run","/pipe/whip/holds"),t=e===void 0?_s():{holds:e,net:""};return ot({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:sL})}function sL(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${$s("/pipe/whip_now")}
  </div>`}function aL(e,t,n){return t.readings?.length?F({name:`${Js(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>lL(e,t,n)}):d}function lL(e,t,n){return s`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${t.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${ei(`${Js(n)}.readings`,"Show the calculation",`${Vs(e,n)}.readings`)}`}function mk(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",e))?.[1]?.replace(",",".")),n=Qe("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${wo("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${eL.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${dL(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function dL(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function uL(e){let t=e.whippings.map(i=>({one:i,words:cL(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?d:s`<h3>Limits of whisk, bowl and time ${ck(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${uk(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:d}${i.text}
          </li>`)}
    </ul>
    ${ei("pipe.limits","How the limits come about",`${Vs(e,0)}.limits`)}`}function cL({piping_s:e,lye_spoonfuls:t}){return[e?`${bo(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${bo(t.altogether_s)}`:""].filter(Boolean).join("; ")}function hk(e){return ut({name:"lye",title:"Lye",drawing:mL,result:e?fk(e).map(pL):Re("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${fk(e).map(fL)} ${gL(e)}</div>`:d}
        <div class="more">${Dv()} ${Pv(e)}</div>`})}function fk(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=$l(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:Vs(e,r),pieces:t,key:Js(r)}});return[n,...o]}function pL({title:e,batter:t,slot:n,pieces:o}){let i=_o(n,o).length?" \u26A0":"";return Re(s`${e}: ${S(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${lt(t.superfat_percent.effective)}${i}</b>.`)}var mL=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function fL({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,u=_o(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${I({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${I({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${lt(l)}${u?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${ts(e,c,i)} ${gk(n.superfat_percent)} ${hL(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?d:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:u?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function gk(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${lt(t)} and ${lt(n)}, as lots, purity and scales may fall`,u=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${lt(o)} and ${lt(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:d;return Lc(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${u}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${u} Some fat is left over even at the lowest.${p}</p>`}function hL(e,t,n){return e.heat?s`${_k(e.heat)} ${ei(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:d}function _k(e){let t=i=>x(k$(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?bo(i.shortest_min*60):"at once"} to ${bo(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function gL(e){let t=e.lye_pot;if(!t)return d;let{units:n}=a,o=(i,r,l,u,c="")=>I({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${u}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(t.strength_percent,1)} %${be(e)&&`; ${be(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",X(n,ae(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,X(n,ae(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",X(n,ae(t,"lye_")),"lye_g",_L(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,X(n,ae(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${lt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,X(n,ae(i,"top_up_")),`shares.${r}.top_up_g`):d}
        ${ts(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?gk(i.superfat):d}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${x(X(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:d}
    ${t.heat?_k(t.heat):d}
  </div>`}function _L(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=ae(e,"lye_"),i=X(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${x(i)} with the pot: make up with water to that after cooling`}var Qs=new Map,$L=()=>Qs.clear(),bL=e=>typeof e?.owned=="number"?e.owned:void 0;function nf(e){let t=st(e,a.files?.moulds);return Qs.has(t)||(Qs.set(t,void 0),wL(t)),Qs.get(t)}async function wL(e){try{Qs.set(e,bL(we((await Ke(e)).text))),Q()}catch(t){if(!(t instanceof w))throw t}}async function $k(e,t){let n=nf(e);n!==void 0&&(Z("studio",t,n),D(`${n} kept in the studio`),await yL(st(e,a.files?.moulds)),se())}async function yL(e){let t=await Ie(it,e);t.shipped||t.theirs||(Ee(t,M(t.now,"/owned",void 0)),await cn(t),$L())}var Id=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Ed=e=>e[0].toUpperCase()+e.slice(1),Nd=e=>h({...e,of:"studio"});function bk(){return!Un()&&a.run.file&&a.open.has("folded studio days")&&or("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${F({of:"studio",name:"days",pointers:["/days",...sn()?[]:["/work"]],summary:s`<span>When you work${s`<small>${vL()}</small>`}</span>`,body:kL})}
  </section>`}function vL(){let e=g("studio","/days/making")??{};return Id.filter(t=>e[t]).map(t=>`${Ed(t)} ${String(e[t])}`).join(", ")}var kL=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${Id.map(e=>Nd({label:Ed(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${W("studio","/days")} ${W("studio","/days/making")} ${xL()} ${TL()} ${SL()}
    ${sn()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${ld(g("studio","/days")!==void 0)}</div>
            ${W("studio","/work")}`}`;function xL(){let e="/days/small_jobs",t=Y("studio",e),n=te("studio",e),o=l=>{let u=Id.filter(p=>p===l!==n.includes(p)),c=p=>zn(M(p,e,u.length?[...u]:void 0),"/days");wt("studio",`${Ed(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Qe("studio",e),r=Id.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Ed(l)}
          </button>`)}
    </div>
    ${$e(t,i,"Without any, these wait for a making day.")}
  </div>`}var Gs={of:"studio",at:"/days/off",and:e=>zn(e,"/days")};function TL(){return s`<p class="question">Days off and holidays</p>
    ${k(Gs).map((e,t)=>RL(String(e),t))}
    ${ee(Gs,"Add a day off",()=>U(Gs,"","A day off"))}`}function RL(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=Y("studio",n),l=Fe("studio",n),u=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,v)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${P(b)}
        @input=${T=>v(T.target.value)}
        @blur=${ni}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:d}
      />
      ${m===r?$e(r,l):d}
    </div>`,p=o?`off on ${N(o)}`:`day off ${t+1}`;return s`<div class="row" id=${E(Gs,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>u(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>u(o,m))} ${J(Gs,t,p)}
  </div>`}function SL(){let e=(t,n,o)=>Nd({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${Nd({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${AL()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:d}`}var AL=()=>ot({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>Nd({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var DL={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},wk=e=>({run:e,studio:e}),of=e=>wk(`/losses/${e}`);function rf(e,t){return DL[e].map(({name:n,label:o,unit:i,optional:r})=>qe(wk(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var sf={holds:"",paid:""},jd=e=>({of:"studio",at:`/packs/${j(e)}`,in_order:!0,and:(t,n)=>n?t:Ji(zn(t,"/packs"),[`/serves_as/${j(e)}`])});function vk(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function kk(e,t){let n=new Set(vk(t).map(o=>o.toLowerCase()));return fe("studio",e).find(o=>n.has(o.toLowerCase()))}var hi=e=>kk("/packs",e),xk=e=>Nt().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,Tk="money packs";function Rk(e){return s`${fe("studio","/packs").map(t=>PL(t,e))}
  ${fi({key:"pack",label:"Which material comes in packs?",offers:Nt(),taken:t=>hi(t)!==void 0,take:Hd})}`}function PL(e,t){let n=jd(e),o=ne(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>FL(n,r,o,xk(e),t))}
    <div class="row">
      ${ee(n,s`Another pack of ${o}`,()=>U(n,sf,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${j(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${OL(e)}
    </div>
  </div>`}var yk=e=>`/serves_as/${j(e)}`;function OL(e){let t=yk(e),n=O("studio",t),o=new Set(vk(e)),i=[...new Set([...Nt(),...fe("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",yk(l))===void 0),r=l=>u=>zn(M(u,t,l||void 0),"/serves_as");return!n&&(Nt().some(l=>o.has(l))||!i.length)?d:me({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,ne(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>wt("studio",`${ne(e)}: ${l?ne(l):"a material of its own"}`,r(l))})}function FL(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),u=g("studio",`${r}/density`)!==void 0||Qe("studio",`${r}/holds`);return s`<div class="row" id=${E(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${ML(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${u?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):d}
    ${J(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function ML(e){let t=`${e}/from`,n=fe("studio","/sellers");return n.length?me({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Hd(e){let t=`/packs/${j(e)}`,[n,o]=[`/prices/${j(e)}`,`/money/prices/${j(e)}`],i=ir().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(BL),l=r.length?[...r,sf]:[sf];Kt([["studio",c=>LL(M(Ji(c,[n]),t,l))],...i!==void 0?[["run",c=>Ji(c,[o])]]:[]]),D(r.length?`The price of ${ne(e)} is its first pack now`:`${ne(e)} added`),Ge("studio",Tk),C(Xt(E(jd(e),l.length-1)))}var LL=e=>$(e,"/currency")?e:M(e,"/currency",pd());function BL(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var Sk=e=>s`<button
    type="button"
    aria-label="Another pack size of ${ne(e)}"
    @click=${()=>Hd(e)}
  >
    Another pack size
  </button>`;function Ak(e){let t=hi(e),n=te("studio",jd(t).at).length,o=()=>{Ge("studio",Tk),C(Xt(E(jd(t),0)))};return s`<div class="row">
    <p>${ne(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ne(e)}" @click=${o}>To its packs</button>
  </div>`}function Dk(){let e=t=>`/have/${j(t)}`;return s`${fe("studio","/have").map(t=>{let n=xk(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:ne(t),at:e(t),unit:n,hint:o,short:!0})}
      ${oi("studio","/have",t,ne(t))}
    </div>`})}
  ${fi({key:"have",label:"Which material stands on the shelf?",offers:Nt(),taken:t=>kk("/have",t)!==void 0,take:t=>q("studio",`${ne(t)} added`,e(t),"",oe("studio",e(t)))})}`}var Pk=({key:e})=>`money ${e}`;function Mk(){if(!sn())return d;let e=WL(pd());return!Un()&&e.some(t=>a.open.has(`folded studio ${Pk(t)}`))&&Gl(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${CL()}
    <div class="folds">
      ${e.map(t=>F({of:"studio",name:Pk(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:d}</span>`,body:t.body}))}
    </div>
  </section>`}var CL=()=>g("run","/money/currency")===void 0?d:s`<div class="row">
        ${gi({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,gi=e=>h({...e,of:"studio"}),qd=e=>fe("studio",e).map(ne).join(", ");function WL(e){let t=(i,r,l={})=>gi({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=O("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:qd("/packs"),body:()=>Rk(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:qd("/sellers"),body:()=>EL(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:qd("/have"),body:Dk},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(fr).map(i=>ne(String($(i,"/material")))).join(", "),body:jL},{key:"work",title:"Work",pointers:["/work"],told:o(di("paid_an_hour"),` ${e} an hour`),body:()=>qL(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:UL},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${gi({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:qd("/asking"),body:()=>zL(t)}]}var IL=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:u},c)=>u===e?M(l,`/packs/${j(i)}/${c}/from`,n):l,o),t);function EL(e){let t=(n,o)=>`/sellers/${j(n)}/${o}`;return s`${fe("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${oi("studio","/sellers",n)}
        </div>
        <div class="row">
          ${ds({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:IL(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${gi({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Vi({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>oe("studio",t(n,"postage"))})}`}var fr={of:"studio",at:"/packaging"},NL=e=>!Nt().includes(e)&&!a.fats.some(t=>t.id===e);function jL(){let e=t=>k(fr).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(fr).map((t,n)=>HL(String($(t,"/material")??""),n))}
    ${fi({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>fe("studio",t)).filter(NL),taken:e,take:t=>U(fr,{material:t,each_piece:""},t)})}`}function HL(e,t){let n=hi(e)!==void 0||g("studio",`/prices/${j(e)}`)!==void 0;return s`<div class="row" id=${E(fr,t)}>
    ${gi({label:`${ne(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?d:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Hd(e)}>
            Say its price
          </button>`}
    ${J(fr,t,e)}
  </div>`}function qL(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(di("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${ld()}
    </div>
    ${W("studio","/work")}`}var Ok=(e,t)=>A({of:"studio",question:e,at:`/tax/${t}`,chosen:O("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),UL=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ot({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${gi({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${Ok("The prices you pay are","prices_paid")} ${Ok("The prices you ask are","prices_asked")}`})}`,Fk=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function zL(e){let t=n=>`/asking/${j(n)}`;return s`${fe("studio","/asking").map(n=>KL(n,t(n),e))}
  ${Vi({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>oe("studio",t(n))})}
  ${JL(e)}`}function KL(e,t,n){let o=g("studio",t)??{},i=Fk.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>gi({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${oi("studio","/asking",e)}
    </div>
    <div class="row">${ds({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${A({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:Fk,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:d}
  </div>`}var Ys={of:"studio",at:"/price_endings"},JL=e=>s`<p class="question">A price ends in</p>
    ${k(Ys).map((t,n)=>s`<div class="row" id=${E(Ys,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${J(Ys,n,`ending ${n+1}`)}
        </div>`)}
    ${ee(Ys,"Add an ending",()=>U(Ys,"","An ending"))}`;var VL=e=>le()&&hi(e)===void 0&&ir().length>0;function Lk(){if(!sn())return s`<button type="button" @click=${QL}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${j(t)}/${n}`;return{run:cd.run+o,studio:cd.studio+o}};return s`<div class="row">
      ${qe(An,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Nt().map(t=>hi(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${qe(e(t,"paid"),{label:`${ne(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${qe(e(t,"for"),{label:`for how much ${ne(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${VL(t)&&bn(e(t,"paid"))?Sk(t):d}
            </div>`:Ak(t))}
    </div>
    ${Nt().length?d:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function QL(){let e=le()?"studio":"run",t=e==="studio"?An.studio:An.run;q(e,"Prices added",t,"",oe(e,t))}var hr=e=>({run:e,studio:e}),af=e=>({run:`/pipe/${e}`,studio:`/${e}`}),GL=hr("/scales"),Bk=hr("/spoilage"),YL=hr("/pots");function lf(e){return ut({name:"studio",title:"My studio",result:Re(ZL()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>XL(e)})}function ZL(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function XL(e){let t=eB(e),n=[...t.flatMap(o=>o.all),...dt()?[Ml]:[]];return s`${le()?d:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{zc(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${yo(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${le()?s`${Mk()} ${Yv()} ${bk()}`:d}`}function eB(e){let t=yt(),n=[{title:"Scales",all:[GL],body:tB},{title:"Losses",all:[of("pour"),...t?[of("pipe")]:[]],body:()=>nB(t,e)},{title:"Rejects",all:[Bk],body:iB},{title:"Pot and lye jug",all:[YL],body:rB},{title:"Moulds owned",all:Ck().map(({shared:o})=>o),body:aB},{title:"Prices paid",all:ir(),body:Lk}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(af),body:sB},{title:"Weigh-cups",all:[],body:Lb}),le()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[cr],body:Gm}),n}function tB(){let e=(t,n)=>s`${qe(hr(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${qe(hr(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function nB(e,t){return s`<div class="row">
      ${rf("pour",e?"Base":void 0)} ${e?rf("pipe","Topping"):d}
    </div>
    ${t?oB(t):d}`}function oB({pour:e,pipe:t,...n}){let o=be({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:u})=>`${r}: ${x(H(a.units,l))} in the pieces, ${x(H(a.units,u))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var iB=()=>qe(Bk,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function rB(){let e=(t,n,o)=>qe(hr(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function sB(){let e=(n,o,i,r=!1)=>qe(af(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>bn(af(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Ck(){return["/pour",...k(je).map((t,n)=>dr(n))].flatMap(t=>{let n=O("run",`${t}/mould`);return n?[{mould:n,shared:{run:gv(t),studio:`/moulds_owned/${j(Kc(n))}`}}]:[]})}function aB(){return s`<div class="row">
    ${Ck().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=bn(t)===void 0?nf(e):void 0,i=()=>{$k(e,`/moulds_owned/${j(Kc(e))}`)};return s`${qe(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&le()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:d}`})}
  </div>`}function df(e){let t=e&&Qi(e);return s`${dB(e)}
    <div class="set-up">${Wk(t)} ${lB()} ${lf(t)}</div>`}function Wk(e){return s`${ak(e)} ${yt()?dk(e):d}
  ${Nv()?qv(e):d} ${jv()?zv(e):d}
  ${dt()?Qv(e):d} ${hk(e)} ${Qm()?Gv(e?.whole):d}`}function lB(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${yt()?d:s`<button type="button" @click=${Bb}>Add a topping</button>${Cb()}`}
      ${Rv()} ${jb()}
      ${Qm()?d:s`<button type="button" @click=${Ov}>Draft the label</button>`}
    </div>
  </section>`}function Ik(e=d){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Ki("Mould","/pour/mould",a.files?.moulds)}
    ${Ki("Base","/pour/formula",a.files?.formulas)}
    ${yt()?Ki("Topping","/pipe/formula",a.files?.formulas):d} ${e}
  </div>`}function dB(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:d}
    ${Ik(e?uB(e):d)}
    <div class="batches">${e?Mv(e):d} ${zm()} ${Jm()}</div>
  </section>`}function uB(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,u=Ye(e)?`${l} batches, ${z(o,"filling")}`:bl(o,i);return I({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${u}`:u,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function cB(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(pB);return[Lt({part:"Run"},()=>[Ik(),zm(),Jm()]),...t.map(n=>Lt({part:String(a.formulas[n].now.name||"Formula")},()=>xw(n))),Wk(),lf()]}var pB=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;O$(cB);var mB={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Ek(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${mB[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:d}
  </section>`}function Nk(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function gr(e){let t=oo(e);return t?.finished_at?"done":t||io(e)?"under way":"not begun"}var fB=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function hB(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>gr(r)===i);return o("under way")??o("not begun")??1}function uf(){let e=fB(),t=hB(e),n=oo(t),o=Nk(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Nk(n.plan,t):o}}var Dn=({kept:e})=>!e&&a.is_old,_r=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var gB=6,_B={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Hk({number:e,of:t}){if(t<2)return d;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${gr(i)}`;return t>gB?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>jk(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ce("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${_B[gr(i)]}</span> ${i}<small>
          ${gr(i)}</small
        >`]),i=>jk(Number(i)))}function jk(e){Mg(e),D(`Batch ${e}, ${gr(e)}`)}var Ud="";function qk(e){let{kept:t,number:n}=e;if(!t)return d;if(t.finished_at)return $B(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!ro(n,l).is_done).length,r=()=>i?Uk(t.id):void Hu(n);return s`<div class="batch-end">
    <p class="aside">Begun ${Kk(t.begun_at)}; its weights stay as they were then.</p>
    ${Ud===t.id?zk(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Hu(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${io(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function $B({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Kk(n)}.</p>
    ${Ud===o?zk("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Ir(t)}):s`<button type="button" @click=${()=>Uk(o)}>Start this batch anew</button>`}
  </div>`}function Uk(e){Ud=e,Q(),C(L("batch-stays"))}function zk(e,t,n){let o=()=>{Ud="",Q(),C(L("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var bB=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Kk=e=>bB.format(new Date(e));var wB={pour:"Base",pipe:"Topping"},Jk=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function Vk(e,t){let[n,o]=[Jk(e),Jk(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${wB[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},u=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...u,...c]}var cf=3,pf=new Map,mf="";function yB(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Ff(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:B(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=Vk(n.vessels,o.vessels),u=new Set(_r(n).map(({text:p})=>p)),c=_r(o).flatMap(({text:p})=>u.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function Qk(e){let t=yB(e),{kept:n}=e;if(!t||!n)return d;if(pf.get(n.id)===t.mark)return xB(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${vB(t)}
    </p>
    ${kB(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${$t}</strong> As it is now: ${i}</p>`)}
    ${mf===n.id?SB(e):TB(e,t)}
  </div>`}function vB({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-cf;return s`${e.slice(0,cf).join("; ")}${n>0?` and ${n} more.`:"."}`}var kB=({told:e})=>e.length>cf?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:d;function xB(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(pf.delete(e),Q())}>What has changed</button>
  </div>`}function TB(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{pf.set(o,t),Q(),C(L("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>RB(e)}>Start this batch anew</button>`:d}
  </div>`}function RB(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void Ir(e.number);mf=o,Q(),C(L("keep-weighing"))}function SB(e){let t=Object.keys(e.kept.ticks).length,n=()=>{mf="",Q(),C(L("run-title"))},o=()=>{n(),Ir(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Gk=({text:e})=>s`<p class="danger"><strong>${$t}</strong> ${e}</p>`;function Yk(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=_r(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(Gk)}</div>`:d}var AB=({vessel:e})=>["lye","lye_pot","share"].includes(e),DB=({batter:e},t)=>!e||!t.batter||e===t.batter;function Zk(e,t){if(!AB(t))return d;let n=_r(e).filter(o=>DB(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${Gk(o)} ${PB(o)}`)}</div>`:d}function PB({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${FB}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>OB(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function OB(e){at(e),requestAnimationFrame(()=>C(oe(e,"/superfat")))}function FB(){f({view:"watch"}),C(L("watch-title"))}var ff=(e,t)=>s`<p class="do ${Dn(e)?"old":""}">${t}</p>`;function Xk(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${x(_e(a.units,o))} below the brim`;return ff(e,s`${r}, <b>${x(H(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function ex(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?ff(e,s`Whip until the level weigh-cup holds <b>${x(H(a.units,n.net_g))}</b>.`):d}function tx(e,{batch:t}){let{pipe:n}=t;return n?ff(e,s`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,n.mass_each_g))} at the
      planned whipped density.`):d}function nx({kept:e,number:t}){let{run:n,poured_by:o}=a.record,i=e&&Vt(t,e.begun_at);return!o||n!==a.run.file||i?d:s`<div class="banner quiet poured-by">
    <p>${xa(o.words)}. What stands here would be a base of its own.</p>
    <button type="button" @click=${()=>{Gt(o.order)}}>To the order</button>
  </div>`}var MB=({vessel:e})=>e==="lye"||e==="lye_pot";function ox(e,t,n){let o=a.plan?.lye_of_day;if(!MB(n)||!(o??LB()))return d;if(o&&!o.may_be_shared)return s`<p class="day-pot">${o.text}</p>`;let i=e.planned?.mark===t.mark;return s`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${i?BB(e,n):s`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${Rt({name:"days",file:a.run.file})}>To Days, where each pot stands</a>
  </div>`}var LB=()=>!a.plan&&$(a.beside.studio?.now,"/days/one_lye_a_day")!==void 0;function BB(e,t){let{days:n,complaint:o,is_old:i}=or("run");if(o)return s`<p>The days of this run cannot be told yet: Days says why.</p>`;if(!n||i)return s`<p>Asking for the days of this run ...</p>`;let r=WB(n,e.number,t);return r?s`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${ke(r.made)} for
      ${xe(r.for)}:
    </p>
    ${IB(r,e.number,t)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`:s`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`}var CB=({vessel:e,batter:t})=>e==="lye_pot"?"all":t==="pipe"?"topping":"base",WB=({lyes:e},t,n)=>e.find(o=>o.lye_of===CB(n)&&o.batches.some(({batch:i})=>i===t));function IB({batches:e,pot:t},n,o){let i=e.filter(({batch:l})=>l===n).flatMap(({shares:l})=>l),r=o.rows.filter(({role:l})=>!["water","ice","alkali"].includes(l)).map(({name:l})=>l);return s`<ul>
      ${i.map(l=>{let u=t.shares[l],c=u.top_up_g>0?x(X(a.units,ae(u,"top_up_"))):"";return s`<li>
          ${u.batter}: <b>${x(X(a.units,ae(u,"lye_"),"down"))}</b> of the lye
          solution${c?s`, and <b>${c}</b> of plain water`:d}
        </li>`})}
    </ul>
    ${r.length?s`<p>Into the share, as below: ${Ne(r)}.</p>`:d}`}function ix(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[Mt(n)===o?n:t,""]}function rx(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return NB(e,t,n);let o=EB(e,t,n);return o===void 0?void 0:{place:o}}function EB({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return ax(i,r,e,n);case"layers":return HB(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return hf(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:hf(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(u=>u.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return jB(i,r,e,n)}}function NB({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var sx=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function jB(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,sx(e)),r=e.batter==="pipe"?i.reduce((l,{count:u})=>l+u,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:ax(e,t,n,o,"lye")}function hf(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function ax(e,t,n,o,i=e.vessel){let r=sx(e),[l,u]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${u}.ingredients.${c}.g`}function HB(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:hf(e.name,t[o].colours,`${n}.${o}.colours`)}function gf(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>ro(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${lx(n)}>
    <div class="vessel-head">
      <h3 id=${lx(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:d}${n.day_before?s` <b>the day before</b>`:d}${i?s` <span class="all-in">✓ all in</span>`:d}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${ox(e,t,n)} ${Zk(t,n)}
    ${vl(n.rows,({key:r})=>r,r=>qB(e,t,n,r))}
  </section>`}var lx=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function qB(e,t,n,o){let{is_done:i,is_waiting:r}=ro(e.number,o.key),[l,u]=ix(a.units,o),c=Dn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${P(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>UB(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:d}${r?s` <small class="not-kept">not kept yet</small>`:d}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:d}
      <span class="amount ${c?"old":""}"><b>${l}</b>${u?s` <i>${u}</i>`:d}</span>
    </label>
    ${zB(e,t,n,o)}
  </div>`}function UB(e,{mark:t},n,o){if(!Dn(e))return Pg(e.number,t,n.key,o.checked);o.checked=!o.checked,D("Not ticked: what is struck through is not to be weighed.")}function zB(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&rx(i,r,o);if(!l)return d;let u=`weigh.${e.number}.${o.key}`,c=a.open.has(u),p=`sum-${u.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>He("open",u)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Ec(l.place):cl(l.working)}</div>`:d}`}function _f(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function dx(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||KB(e,t),o?.batch===e&&o.reading===t?o:void 0)}var $f=!1;async function KB(e,t){let{planned:n}=a;if($f||!n)return;$f=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await na({...n,run:M(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...JB(r,e)}})}catch(r){if(!(r instanceof w))throw r;f({whip_today:{...o,complaint:B(r.complaint)}})}finally{$f=!1}}function JB(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var wf,bf,VB=e=>wf??(Mt(e)==="oz"||!e&&a.units==="us"?"oz":"g");function ux(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return d;let o=Qo(e.number),i=VB(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${qn("weigh_cup")}</div>
    ${Zt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(bf??o)}
        ?disabled=${r}
        @input=${l=>bf=l.target.value}
        @change=${l=>GB(e,t,l.target.value,i)}
      />
      ${ce("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],QB)}
    </div>
    ${YB(e,t,n,o)} ${XB(t,n)}
  </div>`}function QB(e){wf=e,Q()}function GB(e,{mark:t},n,o){bf=void 0;let i=Oe(n)?`${n.trim()} ${o}`:n.trim();if(wf=void 0,i===Qo(e.number))return Q();if(Dn(e))return D("Not taken: the weights are not those of what is typed."),Q();Og(e.number,t,i),e.kept&&Ka(Vt(e.number,e.kept.begun_at),i)}function YB(e,t,n,o){if(!o)return d;let i=dx(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${ZB(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function ZB({pieces:e,count:t},n){if(n===null)return d;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${z(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function XB(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${x(H(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${S(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Zs="pour",cx=()=>uf().kept!==void 0;function px(e){Ra(),mo();let t=uf(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${Zs} aria-labelledby="run-title">
    ${eC(t)} ${nC(t)} ${nx(t)}
    ${t.weights&&n?s`${Yk(t.weights)} ${Qk(t)} ${oC(t,t.weights,e)}`:d}
    ${t.weights&&n&&!yf(t)?fx(t,t.weights,e):d}
    ${qk(t)}
  </section>`}function eC(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${tC(e,t)}</p>`:d}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Hk(e)}
    </div>
  </div>`}function tC(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(u=>u.rows),r=i.filter(({key:u})=>ro(e.number,u).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${nn(t,n)}</b>, ${r} of ${i.length} weighed`}function nC({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,u=o!==void 0&&io(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Lg}>I have looked</button>`:d}
    ${u?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:d}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?d:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function oC(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),u=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>gf(e,t,_));return s`${dC(c,r)}
    <div class="batters ${c?"two":""}">
      ${zd("ahead","To have ready",p(l))}
      ${zd("base",c?"Base":"Batter",iC(e,t,i("pour"),l,n))}
      ${c?zd("topping","Topping",[...p(i("pipe")),aC(e,t),_f(i("pipe"),sC(e,t))]):d}
      ${zd("after","At the end",p(u))}
    </div>`}var mx=({vessel:e})=>e==="lye"||e==="lye_pot";function yf(e){let n=(e.weights?.vessels??[]).filter(o=>mx(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>ro(e.number,o).is_done)}var fx=(e,{plan:t,batch:n,mark:o},i)=>Gw({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${nn(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:Dn(e),is_due:yf(e),show:i}),zd=(e,t,n)=>n.some(o=>o!==d)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:d;function iC(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>gf(e,t,m)),u=n.filter(p=>!r(p)),c=u.map(mx).lastIndexOf(!0);return[...l(u.slice(0,c+1)),yf(e)?fx(e,t,i):d,...l(u.slice(c+1)),Xk(e,t),...l(n.filter(r)),_f([...o,...n],rC(e,t))]}var hx=(e,t,n=d)=>s`<p class=${Dn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>lt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,rC=(e,{batch:t})=>hx(e,[t.pour],wo("superfat_as_weighed")),sC=(e,{batch:t})=>hx(e,t.pipe?.whippings??[]),aC=(e,t)=>s`${ex(e,t)} ${ux(e,t)} ${tx(e,t)}`,lC={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function dC(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>lC[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?d:(o.some(([i])=>i===Zs)||(Zs="pour"),s`<div class="narrow">${ce("What is shown",Zs,o,uC)}</div>`)}function uC(e){Zs=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var gx=()=>s`${ai(cx()?"No new weights can be given.":void 0)} ${px(()=>{Xe("record")})}`;var cC={"set-up":df,watch:Ek,money:lv,days:Jy,mould:pv,print:hv};function _x(e){let t=s`${ya().map(o=>yn(o))} ${wa().map(vn)}`;if(e==="weigh")return s`${t} ${gx()}`;if(e==="record")return s`${t}
    ${ly({to_weights:()=>{Xe("weigh")},to_learned:()=>{Xe("learned")}})}`;if(e==="learned")return s`${t} ${ai()} ${rv()}`;let{plan:n}=a;return s`${t} ${ai()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?cC[e](n):pC(e)}`}function pC(e){return a.complaint?e==="set-up"?df():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var mC=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function bx(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${mC}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Ll(e.sell),r=t.trim()&&n&&o&&i,l=()=>{Te(async()=>{await nl({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${P(t)}
          @input=${u=>y(e,{name:u.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${$x(e,"mould","Mould",fC())} ${$x(e,"formula","Base",hC())}
      ${Bl("new-run-sell",e.sell,u=>y(e,{sell:u}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?d:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var fC=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],hC=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function $x(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>y(e,{[t]:l.target.value})}>
      <option value="" .selected=${P(e[t]==="")}>choose ...</option>
      ${o.map(([l,u])=>s`<option value=${l} .selected=${P(l===e[t])}>${u}</option>`)}
    </select>
  </div>`}var gC=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function yx(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(gC),n=e.filter(o=>o.shipped);return s`${Wt("Runs")} ${bx()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?on(t,wx):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${on(n,wx)}
    </section>
    ${It("run")}`}function wx(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":z(t,"piece"),n??"",o?`due ${N(o)}`:"",i?`made ${N(i)}`:r?`changed ${N(r)}`:""].filter(Boolean);return kn({kind:No,one:e,facts:l,picture:_C(n),open:()=>Nn(e.file)})}var _C=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var _i=({material:e,lot:t})=>`${e}:${t}`,vx=(e,t)=>e.material===t.material&&e.lot.toLowerCase()===t.lot.toLowerCase(),kx=(e,{lots:t})=>t.filter(n=>vx(n,e));function vf(e){return e[0]?.left.pieces!==void 0?{pieces:e.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(e.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function xx(e,{kind:t,of:n}){if(t==="counted"){let i=e?.materials.flatMap(l=>l.lots)??[],r=i.find(l=>_i(l).toLowerCase()===n.toLowerCase());return r?vf(i.filter(l=>vx(l,r))):{g:0}}return{pieces:e?.pieces.find(({batch:i})=>i===n)?.there??0}}var $r=({kind:e,of:t},n)=>`shelf-${`${e}-${t}-${n}`.replaceAll(/[^\w]+/g,"-")}`,xf=({complaint:e},t)=>e&&e.field===t&&!e.asks?B(e):void 0;function We(e,{name:t,label:n,kind:o,number:i,count:r,hint:l}){let u=$r(e,t),c=xf(e,t),p=c??l;return s`<div class="field ${c?"wants":""}">
    <label for=${u}>${n}</label>
    <input
      id=${u}
      type=${o??"text"}
      inputmode=${r?"numeric":i?"decimal":d}
      autocomplete="off"
      spellcheck="false"
      .value=${P(e.typed[t]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${u}-said`:d}
      @input=${m=>Qt(e,{typed:{[t]:m.target.value}})}
    />
    ${p?s`<p id="${u}-said" class=${c?"complaint":"hint"}>${p}</p>`:d}
  </div>`}var et=({typed:e},t)=>e[t]?.trim()||void 0;function Kd(e,t,n,o){let i=(e.typed[t]??"").trim().toLowerCase(),r=i.split(/\s+/),l=o.filter(c=>r.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?d:s`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,kf).map(c=>s`<button type="button" @click=${()=>Qt(e,{typed:{[t]:c}})}>${c}</button>`)}
    </div>
    ${l.length>kf?s`<p class="hint">${l.length-kf} more: type a part of the name.</p>`:d}`}var kf=8;var br=({kind:e,of:t})=>`shelf-form-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`;function wr(e){let{form:t,title:n,act_words:o,fields:i}=e,r=br(t),l=()=>{yc(t),C($C(t))};return s`<form
    class="shelf-act"
    aria-labelledby=${r}
    @submit=${u=>{u.preventDefault(),Sx(e)}}
  >
    <p class="part-title" id=${r} tabindex="-1">${n}</p>
    ${i} ${bC(e)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${t.is_asking}>
        ${t.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var $C=({kind:e,of:t})=>L(`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`),Tx=(e,t)=>`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`,Rx="shelf-told";async function Sx({form:e,act:t,names:n}){let o=t();if(o&&await Ga(e,o))return C(L(Rx));let i=En(e)?.complaint;i&&C(L(n.includes(i.field)&&!i.asks?$r(e,i.field):`${br(e)}-said`))}function bC(e){let{form:t,names:n}=e,{complaint:o}=t;if(!o||n.includes(o.field)&&!o.asks)return d;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,r=l=>()=>{l(),Sx(e)};return s`<div role="alert">
    <p class="alarm" id="${br(t)}-said" tabindex="-1">${xe(B(o))}</p>
    ${i===void 0?d:s`<button type="button" class="answer" @click=${r(()=>R_(t,i))}>It is so</button>`}
    ${o.asks==="seen"?s`<button type="button" class="answer" @click=${r(()=>S_(t,xx(a.stock.list,t)))}>
            Record it even so
          </button>`:d}
  </div>`}function yr(e){let{told:t}=a.stock;return t?.of!==e?d:s`<div class="told" id=${Rx} tabindex="-1">
    <div>${t.sentences.map(n=>s`<p>${xe(n)}</p>`)}</div>
  </div>`}var wC={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},yC={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function Tf(e){let t=[...wC[a.units],...yC[a.units]];return e==="pieces"?["pieces"]:e==="mass"?t:[...t,"pieces"]}var Ax=(e,t,n)=>e.typed[`${t}-unit`]??(n==="pieces"?"pieces":void 0);function Jd(e,t,n,o){let i=Tf(o),r=Dx(e.typed[t])?void 0:Ax(e,t,o);return s`<div class="amount-asked">
    ${We(e,{name:t,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>s`<button
            type="button"
            aria-pressed=${l===r?"true":"false"}
            @click=${()=>Qt(e,{typed:{[`${t}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var Dx=(e="")=>e.trim()!==""&&!Oe(e);function Vd(e,t,n){let o=(e.typed[t]??"").trim();if(!o)return void Xo(e,t,"How much is it?");if(Dx(o))return o;let i=Ax(e,t,n);return i?`${o} ${i}`:void Xo(e,t,"In which unit?")}var Qd=()=>a.stock.list?.names,Fx=(e,t)=>s`${We(e,{name:"on",label:t,kind:"date"})}
  ${We(e,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function Mx(e){let t=Qd()?.currency;return wr({form:e,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:s`${We(e,{name:"bought",label:"Material"})}
      ${Kd(e,"bought","Materials",Qd()?.materials??[])}
      ${Jd(e,"pack","One pack holds","either")}
      <div class="row">
        ${We(e,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${We(e,{name:"price",label:`Price of one pack${t?`, ${t}`:""}`,number:!0,hint:t?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${We(e,{name:"seller",label:"Seller"})} ${Kd(e,"seller","Sellers",Qd()?.sellers??[])}
      ${We(e,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${Fx(e,"Bought on")}</div>`,act:()=>{let n=Vd(e,"pack","either");return n?{bought:et(e,"bought")??"",pack:n,price:et(e,"price"),...Lx(e)}:void 0}})}var Lx=e=>({packs:et(e,"packs"),seller:et(e,"seller"),lot:et(e,"lot"),on:et(e,"on"),"best-before":et(e,"best-before")});function Bx(e){return wr({form:e,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:s`${We(e,{name:"made",label:"What it is"})}
      ${Kd(e,"made","Made ahead",Qd()?.made_ahead??[])}
      ${Jd(e,"pack","It makes","either")} ${vC(e)}
      ${We(e,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${Fx(e,"Made on")}</div>`,act:()=>{let t=Vd(e,"pack","either"),n=t?TC(e):void 0;return n?{made:et(e,"made")??"",pack:t,of:n,...Lx(e)}:void 0}})}var Px=()=>a.stock.list?.materials.flatMap(({lots:e})=>e)??[];function vC(e){let t=(i,r)=>Qt(e,{sources:e.sources.map((l,u)=>u===i?{...l,...r}:l)}),n=()=>Qt(e,{sources:[...e.sources,{lot:"",amount:"",unit:""}]}),o=xf(e,"of");return s`<div class="made-of" role="group" aria-label="What is in it">
    ${e.sources.map((i,r)=>kC(e,i,r,l=>t(r,l)))}
    <button type="button" @click=${n}>
      ${e.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${$r(e,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function kC(e,t,n,o){let i=$r(e,`of-${n}`),r=Px().find(c=>_i(c)===t.lot),l=Tf(Cx(r)),u=()=>Qt(e,{sources:e.sources.filter((c,p)=>p!==n)});return s`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${P(t.lot)} @change=${c=>o({lot:Ox(c)})}>
        <option value="" ?selected=${!t.lot}>Choose</option>
        ${Px().map(c=>s`<option value=${_i(c)} ?selected=${_i(c)===t.lot}>
              ${xC(c)}, lot ${c.lot}: ${Ft(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(t.amount)}
        @input=${c=>o({amount:Ox(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>s`<button type="button" aria-pressed=${c===t.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${u}>Leave out</button>
  </div>`}var Ox=e=>e.target.value,Cx=e=>e===void 0?"either":e.left.pieces===void 0?"mass":"pieces";function xC({material:e,make:t}){let n=a.stock.list?.materials.find(o=>o.material===e);return t??n?.shown_as??e}function TC(e){let t=[];for(let{lot:n,amount:o,unit:i}of e.sources){if(!n)return void Xo(e,"of","Which lot is it?");if(!o.trim())return void Xo(e,"of","How much of it is taken?");if(Oe(o)&&!i)return void Xo(e,"of","In which unit is it?");t.push(`${n}=${Oe(o)?`${o.trim()} ${i}`:o.trim()}`)}return t}function Wx(e,t){let n=Cx(t[0]);return wr({form:e,title:`How much is there of lot ${t[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:s`${t.length>1?s`<p class="hint">${t.length} deliveries have this lot number: count them together.</p>`:d}
    ${Jd(e,"counted","There now",n)}
    ${We(e,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${We(e,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=Vd(e,"counted",n);return o?{counted:[`${e.of}=${o}`],why:et(e,"why"),on:et(e,"on")}:void 0}})}function Ix(){let{materials:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Xs("bought","","Bought",!0)} ${Xs("made","","Made of others")}</div>
    ${ea("bought","",Mx)} ${ea("made","",Bx)} ${RC()}
    ${e.length?s`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${e.map(SC)}`:s`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Xs(e,t,n,o=!1,i,r=""){let l=()=>{wc({kind:e,of:t,seen:i}),C(L(br({kind:e,of:t}))),requestAnimationFrame(()=>document.getElementById(br({kind:e,of:t}))?.scrollIntoView({block:"nearest"}))};return s`<button
    type="button"
    id=${Tx(e,t)}
    class=${o?"strong":""}
    aria-expanded=${En({kind:e,of:t})?"true":"false"}
    aria-label=${r?`${n}: ${r}`:d}
    @click=${l}
  >
    ${n}
  </button>`}function ea(e,t,n){let o=En({kind:e,of:t});return o?n(o):d}function RC(){let e=a.stock.list?.not_counted??[];if(!e.length)return d;let t=()=>{wc({kind:"take-have",of:""});let o=En({kind:"take-have",of:""});o&&Ga(o,{"take-have":!0,on:o.typed.on})},n=En({kind:"take-have",of:""})?.complaint?.line;return s`<div class="part">
    <p>The studio's file lists what is no lot yet: ${e.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${t}>Take it over as lots, once</button>
    ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
  </div>`}var SC=e=>s`<section class="material" aria-label=${e.shown_as}>
    <h3>${e.shown_as}</h3>
    <ul class="lots">
      ${e.lots.map(t=>AC(t,e))}
    </ul>
  </section>`;function AC(e,t){let n=_i(e),o=kx(e,t),i=o[0]===e;return s`<li class="lot ${e.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e.lot}</b>${e.make?s` <span>${e.make}</span>`:d} ${DC(e)}
      </p>
      <p class="lot-facts">${Rf(e).map(r=>s`<span>${r}</span> `)}</p>
      ${e.is_past?Sf(e):d}
    </div>
    <div class="lot-acts">
      ${i?Xs("counted",n,"Counted",!1,vf(o),`lot ${e.lot}`):d}
      <button type="button" aria-label="Where it went: lot ${e.lot}" @click=${()=>Be(`lot ${e.lot}`)}>
        Where it went
      </button>
    </div>
    ${i?yr(n):d}
    ${i?ea("counted",n,r=>Wx(r,o)):d}
  </li>`}function DC({left:e,packs:t,pack:n}){let o=(e.g??e.pieces??0)<0,i=e.pieces===void 0?{g:-(e.g??0)}:{pieces:-e.pieces};return o?s`<span class="below"
        >${Ft(a.units,i)} more was taken than was recorded: count what is there</span
      >`:s`<b>${Ft(a.units,e)}</b>
        <span class="aside">left of ${t===1?"":`${t} \xD7 `}${n}</span>`}function Rf({best_before:e,is_past:t,origin:n,on:o,seller:i,paid:r,currency:l}){let u={bought:"bought",made:"made","before records":"there before records began,"}[n];return[e&&!t?`best before ${N(e)}`:"",`${u} ${N(o)}${i?` from ${i}`:""}`,r!==null?`${r} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var Sf=({best_before:e,lot:t})=>s`<p class="past-words">
    Best before ${N(e)}, which is past. Is ${t} still good? No batch takes it unless you choose it.
  </p>`;function Nx(){let{pieces:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${e.length?s`<ul class="lots">
            ${e.map(PC)}
          </ul>`:s`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var Ex=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function PC(e){let{batch:t,run:n,made:o,there:i}=e;return s`<li class="lot pieces-of" data-batch=${t}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t}</b> <span>${n}</span> ${o===null?d:s`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":Af(e)}</span> ${OC(e)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?d:Ex.map(([r,l])=>Xs(r,t,l,!1,{pieces:i},`pieces of ${t}`))}
      <button type="button" aria-label="Its record: ${t}" @click=${()=>li(e.file,e.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${t}" @click=${()=>Be(`batch ${t}`)}>
        What is in it
      </button>
    </div>
    ${yr(t)} ${Ex.map(([r])=>ea(r,t,l=>MC(l,e)))}
  </li>`}function Af({made:e,rejected:t,sold:n,given:o,spoilt:i,counted:r=0}){let l=[[t,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(r,0),"more by count"],[Math.max(-r,0),"fewer by count"]];return[`${e??0} made`,...l.filter(([u])=>u).map(([u,c])=>`${u} ${c}`)].join(", ")}function OC({cures_until:e,for_sale:t,why_not:n,made:o}){let i=e?`cures until ${N(e)} by its formulas`:"";return t?s`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?s`<span>◔ ${i}</span>`:d:s`${i?s`<span>◔ ${i}</span> `:d}<span
      >✗ not for sale: ${xe(n)}</span
    >`}var FC={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function MC(e,{batch:t,there:n=0}){let{kind:o}=e,[i,r,l]=FC[o],u=o==="sold"||o==="given";return wr({form:e,title:`${i}, of ${t}: ${n} there`,act_words:r,names:[o,"for","order","why","on"],fields:s`${We(e,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${u?LC(e):We(e,{name:"why",label:"Why"})}
    ${We(e,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${t}=${et(e,o)??""}`],on:et(e,"on"),why:et(e,"why"),order:e.typed.order||void 0,for:e.typed.order?void 0:et(e,"for")})})}function LC(e){let t=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=e.typed,o=i=>Qt(e,{typed:{order:i===n?"":i}});return s`${t.length?s`<p class="question" id="for-order-${e.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${e.kind}">
            ${t.map(({file:i,name:r,pieces:l,due:u})=>s`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${r||i}
                  <small
                    >${[l===void 0?"":z(l,"piece"),u?`due ${N(u)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:d}
  ${n?d:We(e,{name:"for",label:t.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function jx(){let{list:e,failed:t}=a.stock;return s`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${t!==void 0?s`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${t}.</p>`:d}
      ${e?s`${BC()} ${CC()} ${WC()} ${Ix()} ${Nx()}`:s`<p class="hint">${t===void 0?"Reading ...":""}</p>`}
    </div>`}function BC(){let{list:e,told:t}=a.stock;return!t||!e?d:e.pieces.some(({batch:o})=>o===t.of)||e.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===t.of))?d:yr(t.of)}function CC(){let e=a.finding?.key==="trail"?a.finding.text:"";return s`<form class="row find-trail" @submit=${n=>{n.preventDefault(),e.trim()&&(f({finding:void 0}),Be(e.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${P(e)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!e.trim()}>Follow it</button>
  </form>`}function WC(){let{has_records:e,notes:t=[]}=a.stock.list??{},n=t.filter(({severity:o})=>o==="danger");return s`${e?d:s`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>s`<p class="alarm">${xe(o)}</p>`)}`}function qx(){let{trail:e}=a.stock,{trail:t,complaint:n,choices:o=[],of:i=""}=e??{};return s`<h1 tabindex="-1">${t?EC(t):i}</h1>
    <div class="trail">
      <div class="row">
        ${IC(e)}
        ${t?s`<button type="button" @click=${()=>window.print()}>Print</button>`:d}
      </div>
      ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
      ${o.length?s`<div class="row">
              ${o.map(r=>s`<button type="button" @click=${()=>Be(r)}>The ${r}</button>`)}
            </div>`:d}
      ${t?NC(t):n?d:s`<p class="hint">Reading ...</p>`}
    </div>`}function IC(e){return e?.order!==void 0&&e.order===a.order?.open.file?s`<button type="button" @click=${()=>f({view:"order"})}>Back to the order</button>`:s`<button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>`}function EC({asked:e,is:t,batches:n}){return t==="lot"?`Where lot ${e} went`:t==="batch"?`What is in ${e}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??e} got`}function NC(e){let{is:t,lots:n,batches:o,gaps:i}=e,r=s`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${t==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?s`<ul class="lots">
            ${n.map(jC)}
          </ul>`:s`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=s`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${t==="lot"?"Batches that hold it":t==="batch"?"The batch":"Batches"}</h2>
    ${o.length?s`<ul class="lots">
            ${o.map(u=>qC(u,e))}
          </ul>`:s`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return s`${t==="lot"?s`${r} ${l}`:s`${l} ${r}`} ${QC(i)}`}var Fo=(e,t,n=t)=>s`<button type="button" class="to-trail" @click=${()=>Be(`${e} ${t}`)}>${n}</button>`;function jC(e){let{shown_as:t}=e;return s`<li class="lot" data-lot=${e.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${Fo("lot",e.lot)} <span>${e.make??t}</span> <b>${Ft(a.units,e.left)}</b>
        <span class="aside">left of ${e.packs===1?"":`${e.packs} \xD7 `}${e.pack}</span>
      </p>
      <p class="lot-facts">${Rf(e).map(n=>s`<span>${n}</span> `)}</p>
      ${e.is_past?Sf(e):d} ${Hx("Made of",e.from_lots)} ${Hx("Went into",e.into_lots)}
      ${e.counts.map(({on:n,by:o,why:i})=>s`<p class="lot-facts">Counted ${N(n)}: ${HC(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function HC({g:e,pieces:t}){let n=e??t??0;return n?`${Ft(a.units,t===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var Hx=(e,t)=>t.length?s`<p class="trail-line">
        ${e}
        ${t.map(n=>s`${Fo("lot",n.lot)} <span>${n.material}, ${Ft(a.units,n.amount)}</span> `)}
      </p>`:d;function qC(e,{is:t,asked:n}){let{batch:o,run:i,begun_on:r,rows:l,pieces:u,went:c,cost:p,lines:m}=e;return s`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${t==="batch"&&o===n?s`<b class="code">${o}</b>`:Fo("batch",o)} <span>${i}</span>
        ${m.length||u.made===null?d:s`<b>${u.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${N(r)}</span>
        ${m.length?d:s`<span>${u.made===null?"how many were made is not noted":Af(u)}</span>`}
        ${p?s`<span>${KC(p)}</span>`:d}
      </p>
      ${UC(e)}
      ${c.length?s`<ul class="trail-went">
              ${c.map(JC)}
            </ul>`:d}
      <ul class="trail-rows">
        ${l.map(VC)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{li(e.file,e.id)}}>
        Its record
      </button>
    </div>
  </li>`}function UC({poured_from:e,lines:t}){return e?s`<p class="trail-line">
      Poured from ${Fo("batch",e.batch)} <span>(${zC(e.share_percent)})</span>
    </p>`:t.length?s`<p class="trail-line">Poured into ${t.map(n=>s`${Fo("batch",n)} `)}</p>`:d}var zC=e=>`${Math.round(e*10)/10} %`;function KC({materials:e,unpriced:t}){let n=e.map(({amount:i,currency:r})=>`${i} ${r}`).join(" and "),o=t.length?`unpriced: ${t.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function JC({what:e,pieces:t,on:n,order:o,for:i,why:r}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[e],u=Math.abs(t),c=e==="counted"?`${u} ${t<0?"fewer":"more"} by count`:`${u} ${l}`,p=o??i;return s`<li>
    ${c} ${p?s`to ${Fo("order",p,i??p)}`:d} on ${N(n)}${r?` (${r})`:""}
  </li>`}function VC({shown_as:e,weighed:t,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return s`<li>
    <span>${e}, ${Ft(a.units,t)}</span>
    ${n.map(r=>s`<span class="trail-from"
          >${Fo("lot",r.lot)} ${n.length>1||i?Ft(a.units,r.amount):d}
          ${r.make??d}</span
        > `)}
    ${i?s`<span class="trail-unknown"
            >${n.length?`${Ft(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:d}
  </li>`}function QC(e){return e.length?s`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${e.map(({batch:t,run:n,shown_as:o})=>s`<li>${Fo("batch",t)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:d}function Ux(){let e=uo();return s`${Wt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${kl(Zn,"Each file is named by the studio, or by the runs that use its tips.",t=>jr(Zn,t))}
      ${e?G$(e):d}
      ${xl({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(X$(t)):Ma(Zn,op(t)),tried:Te})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${Zr().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${It("tips")}`}var Jx=document.getElementById("page");function Vx(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${zy()} ${c$()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!ct(e)&&e!=="order"&&e!=="trail"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:d}
              <p class="alarm" role="alert">${t}</p>`:d}
      ${YC()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var GC={runs:yx,orders:Iy,formulas:Rw,moulds:Sw,fats:ub,tips:Ux,shelf:jx};function YC(){let{view:e,fault:t}=a;return On(e)?_x(e):ct(e)?GC[e]():e==="formula"?kw():e==="order"?Wy():e==="trail"?qx():t?d:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}xh(()=>{pw(),St(Vx(),Jx),eW()});St(Vx(),Jx);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||ct(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Sd();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Xa();ht()});function ZC(){if(!a.run.file)return Df();f({fault:void 0}),ht(),se()}function Df(){f({fault:void 0}),ww().catch(e=>{f({fault:XC(e)}),e instanceof w&&e.may_pass&&window.setTimeout(Df,2e3)})}function XC(e){return e instanceof w&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var zx=new ResizeObserver(([{target:e}])=>Qx(e.offsetHeight)),Kx=null;function eW(){let e=document.querySelector(".foremost");e!==Kx&&(zx.disconnect(),e?zx.observe(e):Qx(0),Kx=e)}var Qx=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);Rh();l$();bw();Of(e=>{er(),e&&ZC()});Df();
