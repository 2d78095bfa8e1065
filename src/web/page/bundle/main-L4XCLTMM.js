import{A as Sf,B as Af,C as rn,D as Df,E as Pf,F as Of,G as rt,H as wt,I as Ff,J as Mf,K as de,L as Rn,M as gr,N as xe,O as Wu,P as Lf,Q as Bf,S as Cf,T as Wf,U as If,a as cf,b as pf,c as L,d as w,e as mf,f as Tn,g as ke,h as Vs,i as qt,j as hi,k as ff,l as hf,m as gf,n as _f,o as $f,p as Po,q as bf,r as wf,s as Qs,t as yf,u as vf,v as kf,w as xf,x as Tf,y as on,z as Rf}from"./chunk-WMCRQAL5.js";var Gs=globalThis,Zs=Gs.ShadowRoot&&(Gs.ShadyCSS===void 0||Gs.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Nf=Symbol(),Ef=new WeakMap,Ys=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==Nf)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Zs&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=Ef.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&Ef.set(n,e))}return e}toString(){return this.cssText}},jf=t=>new Ys(typeof t=="string"?t:t+"",void 0,Nf);var Hf=(t,e)=>{if(Zs)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Gs.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},Iu=Zs?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return jf(n)})(t):t;var{is:bx,defineProperty:wx,getOwnPropertyDescriptor:yx,getOwnPropertyNames:vx,getOwnPropertySymbols:kx,getPrototypeOf:xx}=Object,Xs=globalThis,qf=Xs.trustedTypes,Tx=qf?qf.emptyScript:"",Rx=Xs.reactiveElementPolyfillSupport,_r=(t,e)=>t,Eu={toAttribute(t,e){switch(e){case Boolean:t=t?Tx:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},zf=(t,e)=>!bx(t,e),Uf={attribute:!0,type:String,converter:Eu,reflect:!1,useDefault:!1,hasChanged:zf};Symbol.metadata??=Symbol("metadata"),Xs.litPropertyMetadata??=new WeakMap;var Sn=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Uf){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&wx(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:r}=yx(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);r?.call(this,l),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Uf}static _$Ei(){if(this.hasOwnProperty(_r("elementProperties")))return;let e=xx(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(_r("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(_r("properties"))){let n=this.properties,o=[...vx(n),...kx(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(Iu(i))}else e!==void 0&&n.push(Iu(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Hf(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Eu).toAttribute(n,o.type);this._$Em=e,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Eu;this._$Em=i;let d=l.fromAttribute(n,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,r){if(e!==void 0){let l=this.constructor;if(i===!1&&(r=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??zf)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),r!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};Sn.elementStyles=[],Sn.shadowRootOptions={mode:"open"},Sn[_r("elementProperties")]=new Map,Sn[_r("finalized")]=new Map,Rx?.({ReactiveElement:Sn}),(Xs.reactiveElementVersions??=[]).push("2.1.2");var ju=globalThis,Kf=t=>t,ta=ju.trustedTypes,Jf=ta?ta.createPolicy("lit-html",{createHTML:t=>t}):void 0,Hu="$lit$",An=`lit$${Math.random().toFixed(9).slice(2)}$`,qu="?"+An,Sx=`<${qu}>`,Mo=document,br=()=>Mo.createComment(""),wr=t=>t===null||typeof t!="object"&&typeof t!="function",Uu=Array.isArray,Xf=t=>Uu(t)||typeof t?.[Symbol.iterator]=="function",Nu=`[ 	
\f\r]`,$r=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Vf=/-->/g,Qf=/>/g,Oo=RegExp(`>|${Nu}(?:([^\\s"'>=/]+)(${Nu}*=${Nu}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Gf=/'/g,Yf=/"/g,th=/^(?:script|style|textarea|title)$/i,zu=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),s=zu(1),R=zu(2),uC=zu(3),Ut=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Zf=new WeakMap,Fo=Mo.createTreeWalker(Mo,129);function eh(t,e){if(!Uu(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Jf!==void 0?Jf.createHTML(e):e}var nh=(t,e)=>{let n=t.length-1,o=[],i,r=e===2?"<svg>":e===3?"<math>":"",l=$r;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===$r?m[1]==="!--"?l=Vf:m[1]!==void 0?l=Qf:m[2]!==void 0?(th.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Oo):m[3]!==void 0&&(l=Oo):l===Oo?m[0]===">"?(l=i??$r,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Oo:m[3]==='"'?Yf:Gf):l===Yf||l===Gf?l=Oo:l===Vf||l===Qf?l=$r:(l=Oo,i=void 0);let y=l===Oo&&t[d+1].startsWith("/>")?" ":"";r+=l===$r?c+Sx:_>=0?(o.push(p),c.slice(0,_)+Hu+c.slice(_)+An+y):c+An+(_===-2?d:y)}return[eh(t,r+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},yr=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,d=e.length-1,c=this.parts,[p,m]=nh(e,n);if(this.el=t.createElement(p,o),Fo.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Fo.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Hu)){let b=m[l++],y=i.getAttribute(_).split(An),T=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:T[2],strings:y,ctor:T[1]==="."?na:T[1]==="?"?oa:T[1]==="@"?ia:Bo}),i.removeAttribute(_)}else _.startsWith(An)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(th.test(i.tagName)){let _=i.textContent.split(An),b=_.length-1;if(b>0){i.textContent=ta?ta.emptyScript:"";for(let y=0;y<b;y++)i.append(_[y],br()),Fo.nextNode(),c.push({type:2,index:++r});i.append(_[b],br())}}}else if(i.nodeType===8)if(i.data===qu)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(An,_+1))!==-1;)c.push({type:7,index:r}),_+=An.length-1}r++}}static createElement(e,n){let o=Mo.createElement("template");return o.innerHTML=e,o}};function Lo(t,e,n=t,o){if(e===Ut)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=wr(e)?void 0:e._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=Lo(t,i._$AS(t,e.values),i,o)),e}var ea=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??Mo).importNode(n,!0);Fo.currentNode=i;let r=Fo.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new gi(r,r.nextSibling,this,e):c.type===1?p=new c.ctor(r,c.name,c.strings,this,e):c.type===6&&(p=new ra(r,this,e)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(r=Fo.nextNode(),l++)}return Fo.currentNode=Mo,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},gi=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=Lo(this,e,n),wr(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Ut&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Xf(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&wr(this._$AH)?this._$AA.nextSibling.data=e:this.T(Mo.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=yr.createElement(eh(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new ea(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(e){let n=Zf.get(e.strings);return n===void 0&&Zf.set(e.strings,n=new yr(e)),n}k(e){Uu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of e)i===n.length?n.push(o=new t(this.O(br()),this.O(br()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Kf(e).nextSibling;Kf(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Bo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)e=Lo(this,e,n,0),l=!wr(e)||e!==this._$AH&&e!==Ut,l&&(this._$AH=e);else{let d=e,c,p;for(e=r[0],c=0;c<r.length-1;c++)p=Lo(this,d[o+c],n,c),p===Ut&&(p=this._$AH[c]),l||=!wr(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},na=class extends Bo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},oa=class extends Bo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},ia=class extends Bo{constructor(e,n,o,i,r){super(e,n,o,i,r),this.type=5}_$AI(e,n=this){if((e=Lo(this,e,n,0)??u)===Ut)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,r=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ra=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){Lo(this,e)}},oh={M:Hu,P:An,A:qu,C:1,L:nh,R:ea,D:Xf,V:Lo,I:gi,H:Bo,N:oa,U:ia,B:na,F:ra},Ax=ju.litHtmlPolyfillSupport;Ax?.(yr,gi),(ju.litHtmlVersions??=[]).push("3.3.3");var Te=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new gi(e.insertBefore(br(),r),r,void 0,n??{})}return i._$AI(t),i};var Ku=globalThis,_i=class extends Sn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=Te(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Ut}};_i._$litElement$=!0,_i.finalized=!0,Ku.litElementHydrateSupport?.({LitElement:_i});var Dx=Ku.litElementPolyfillSupport;Dx?.({LitElement:_i});(Ku.litElementVersions??=[]).push("4.2.2");var rh=()=>{},Ju=!1,sa=!1,Qu=!1;function sh(t){rh=t}function Q(){Ju||(Ju=!0,queueMicrotask(()=>{Ju=!1,sa?Qu=!0:ah()}))}function ah(){Qu=!1,rh()}var Px=1500,Vu=0;function ih(){clearTimeout(Vu),sa=!1,Qu&&ah()}function lh(){let t=({target:e})=>{!(e instanceof Element)||e.closest("[role=slider], select, canvas")||(sa=!0,clearTimeout(Vu),Vu=window.setTimeout(ih,Px))};addEventListener("pointerdown",t,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>setTimeout(ih),!0);addEventListener("click",()=>sa=!1,!0)}function uh(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var j=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of uh(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(t,e,n){return Gu(t,uh(e),n)}function Gu(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=Gu(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let r={...t??{}},l=Gu(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var dh=t=>Tn("GET",`/api/bench?run=${encodeURIComponent(t)}`),ch=t=>ke("/api/bench/tick",t),ph=t=>ke("/api/bench/weigh_cup",t),mh=(t,e)=>ke("/api/bench/anew",{run:t,batch:e}),fh=(t,e)=>ke("/api/bench/finish",{run:t,batch:e});var ut=(t,e)=>({name:t,label:e,unit:"mm"}),Jn=ut("height","Floor to brim"),aa={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Yu={block:{words:"Box, loaf or slab",measures:[ut("length","Longer side at the brim"),ut("width","Shorter side"),Jn,aa,{...ut("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ut("floor_diameter","Across the floor"),ut("brim_diameter","Across the brim"),Jn]},fluted_cup:{words:"Fluted cup",measures:[ut("floor_diameter","Across the floor"),ut("brim_diameter","Across the brim"),Jn,{name:"flutes",label:"Flutes",unit:"",count:!0},ut("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ut("across_flats","Across the flats"),Jn,aa]},dome:{words:"Bowl",measures:[ut("diameter","Across the brim"),Jn]},half_ball:{words:"Half ball",measures:[ut("diameter","Across the brim")]},ball:{words:"Ball",measures:[ut("diameter","Across")]},half_ring:{words:"Half ring",measures:[ut("centre_diameter","Ring, middle to middle of the tube"),ut("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ut("outer_floor_diameter","Cup, across the floor"),ut("outer_brim_diameter","Cup, across the brim"),ut("post_floor_diameter","Post, at its foot"),ut("post_brim_diameter","Post, at its top"),Jn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ut("height","Height"),ut("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Jn,aa],points:{columns:[ut("x","From the left"),ut("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ut("side","Straight edge, tip to round"),Jn,aa]}},hh=Object.fromEntries(Object.entries(Yu).map(([t,{words:e}])=>[t,e])),$i=t=>Yu[t]?.measures??[],Vn=t=>Yu[t]?.points;var Zu=(t,e)=>String($(t,e)??"").trim(),vr=t=>Zu(t,"/shape/kind"),Ee=(t,e)=>$(t,`/${e}`)!==void 0,Xu=t=>["body","skin"].includes(Zu(t,"/mesh/role"));function ce(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function gh(t,e){return(Vn(vr(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function kr(t){return ce(t,"/shape/points").flatMap((e,n)=>gh(t,e).every(Boolean)?[n]:[])}function la(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return ce(t,"/shape/points").flatMap((n,o)=>e(gh(t,n))?[o]:[])}var td=t=>ce(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function _h(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let r=i.map(l=>$(t,`${o}/${l}`));e=M(e,o,r)};return Vn(vr(t))&&n("/shape/points",kr(t)),n("/water/weighings",td(t)),e}function ua(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let r=n==="/shape/points"?kr(t):td(t);return`${n}/${r[Number(o)]??o}${i}`}function xr(t){let e=[],n=i=>Zu(t,i)!=="",o=(i,r)=>{i||e.push(r)};if(Ee(t,"shape")){let i=vr(t);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of $i(i))o(c||n(`/shape/${l}`),d.toLowerCase());let r=Vn(i);r&&o(kr(t).length>=r.least,`${r.least} points at least`)}if(Ee(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(td(t).length>0,"a weighing of water")}return!Xu(t)&&!Ee(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var oe=t=>t.slice(0,t.lastIndexOf("/")+1),pe=t=>t.slice(t.lastIndexOf("/")+1),Dn=(t,e)=>{let n=oe(t);return n?Ox(n+e):e};function Ox(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ne(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function bi(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let r=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===r))return r}}var Fx=["mould","formula","run","file","own_fats","own_tips"];function ed(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?ed(o,i):Fx.includes(n)?[i]:[]})}function nd(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...ed(t)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function od(t,e){let n=["/id",...ed(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,r)=>$(i,r)===$(t,r)?M(i,r,$(e,r)):i,o)}var Co={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?pe(e):Ne(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Wo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>Ne(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Io={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?pe(e):Ne(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},id=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>pe(o),written:o=>o,is_begun:()=>!0}),Tr=id("studio","studios","name"),sn=id("fats","fats"),Qn=id("tips","tips","title"),ie={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>Ne(String(t.name),".json"),written:t=>({..._h(t),name:String(t.name??"").trim()}),is_begun:t=>Ee(t,"shape")||Ee(t,"mesh")};var $h={},bh={kind:Co,id:"",file:"",version:null,shipped:!1,now:$h,saved:$h,unanswered:[]},Rt={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:bh,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},learned:{},ways:{},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Bx()),folded:new Set,units:Mx(),announcement:""},a=Rt;function Mx(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var rd=t=>`numbers ${String(t.now.id??t.file)}`,Lx=t=>({numbers:localStorage.getItem(rd(t))??void 0,figure:""});function Rr(t){f({quote_wish:{...Rt.quote_wish,...t}});let{numbers:e}=Rt.quote_wish;e?.trim()?localStorage.setItem(rd(Rt.run),e):localStorage.removeItem(rd(Rt.run))}var wh="set-up ";function Bx(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function Cx(){let t=[...Rt.open].filter(e=>e.startsWith(wh));localStorage.setItem("parts",JSON.stringify(t))}function f(t){Object.assign(Rt,t),Q()}var D=t=>f({announcement:t});function v(t,e){Object.assign(t,e),Q()}function Pn(t,e){let{[t]:n,...o}=Rt.formulas;f({formulas:e?{...o,[t]:e}:o})}function Et(t,e){let n=new Set(Rt[t]);n.delete(e)||n.add(e),f({[t]:n}),e.startsWith(wh)&&Cx()}function wi(t=bh){f({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:Lx(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function dt(t){Rt.open.has(t)||f({open:new Set(Rt.open).add(t)})}function Eo({list:t,called:e},n,o={}){if(!Rt.files)return;let i=Rt.files[t].findIndex(d=>d.file===n),r={...i<0?{}:Rt.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},l=Rt.files[t].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Rt.files,[t]:l}})}function yh({list:t},e,n){if(!Rt.files)return;let o=Rt.files[t].map(l=>l.file===e?{...l,file:n}:l),i=Rt.list_open,r=i?.file===e?Object.assign(i,{file:n}):i;f({files:{...Rt.files,[t]:o},list_open:r})}var Wx=1e4,sd=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",sd);var da=[],yi=()=>`bench ${a.files?.folder??""}`;function me(){try{return[...JSON.parse(localStorage.getItem(yi())??"[]"),...da]}catch{return da}}function ad(t){try{t.length?localStorage.setItem(yi(),JSON.stringify(t)):localStorage.removeItem(yi()),da=[]}catch{da=t}}var Ix=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function vh(t){let e={...t,id:crypto.randomUUID(),tab:sd,at:Date.now()};ad([...me().filter(n=>!Ix(n,e)),e])}var ca=t=>ad(me().filter(e=>!t(e))),kh=(t,e)=>ad(me().map(n=>n.run===t?{...n,run:e}:n)),ld=()=>me().find(t=>t.tab===sd||Date.now()-t.at>Wx);var ht=["pour","pipe","apart"],St=["studio","own_fats","own_tips"],pa=t=>St.includes(t);var ud=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],dd=()=>St.flatMap(t=>a.beside[t]??[]),xh=t=>t.filter(e=>e.theirs),On=t=>xh([...ud(t==="apart"?["apart"]:["pour","pipe"]),...dd()])[0],ma=()=>[a.run,...ud(ht),...dd()].filter(t=>t.is_taken&&!t.theirs),fa=()=>xh([a.run,...ud(ht),...dd()]);var Sr=()=>a.formulas.apart?"apart":"run",Th=t=>f({dangers:{...a.dangers,[Sr()]:t}});function cd(t){let e=t.cautions.filter(n=>n.severity==="danger");Th(e.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Rh(t){t.lye_heavy&&Th([{text:L(t),is_of_heat:!1}])}var Sh={};function je(t,e){(Sh[t]??=[]).push(e)}function yt(t,e){for(let n of Sh[t]??[])n(e)}var Ar=new Map,He=t=>{Ar.set(t,void 0)},Gn=(t,e)=>{Ar.set(t,e)};function Ah(t,e){if(!Ar.has(t))return!1;let n=Ar.get(t);return n===void 0&&Ar.set(t,e),n===void 0||n===e}async function Re({kind:t,name:e,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:y=[]}=a.files??{},T=bi(e,[...d,...c,...p,...m,..._,...b,...y]);r?.(T);let J=await Ex({file:T,version:null,text:n,from:o,goes_on:i});if(Eo(t,T,wt(J.there.text)??{}),J.is_new||l?.(J.there))return J.there}}async function Ex(t){try{He(t.file);let e=await hi(t);return Gn(e.file,e.version),{is_new:!0,there:e}}catch(e){if(!(e instanceof w)||e.status!==409)throw e;return Gn(t.file,null),{is_new:!1,there:e.answer}}}var ha=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function No({kind:t,id:e,file:n,version:o,shipped:i,now:r},l){if(t.is_begun(r))try{let d={id:e,file:n,version:o,shipped:i,text:rt(r),copy:l};localStorage.setItem(ha(t)+e,JSON.stringify(d))}catch{}}function pd(t,e){try{return JSON.parse(localStorage.getItem(ha(t)+e)??"null")??void 0}catch{return}}var Yn=(t,e)=>localStorage.removeItem(ha(t)+e),Dh=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function ga(t){let e=ha(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>pd(t,o)??[])}var Nx=300,G=t=>t.now!==t.saved;function jo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Bt(t,e,n=e){let o=await Wf(e),i=jx(t,JSON.parse(o.text),o.shipped),r=pd(t,n),l=r?.copy&&o.shipped?await Hx(t,r,i):void 0;if(l)return Yn(t,n),Bt(t,l);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return r&&qx(p,r,o),p}var jx=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Hx(t,e,n){if(!a.files?.[t.list].some(r=>r.file===e.copy))return;let o=wt(e.text),i=wt((await qt(e.copy)).text);if(!(!o||!i||rt(o)===rt(n)))return nd(t.written(o),i)?e.copy:void 0}function qx(t,e,n){let o=wt(e.text);if(!o||rt(o)===rt(t.now))return Yn(t.kind,t.id);v(t,{now:o}),!(e.version===n.version||n.shipped)&&(v(t,{version:e.version}),Ih(t,n))}function Ct(t,e){let n=t.now;v(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),No(t),yt("edited",{file:t,before:n})}var Ph=new WeakMap,md=async t=>Ph.get(t),an=t=>Oh(t,()=>Ux(t)),Zn=t=>Oh(t,()=>t.shipped?Fh(t,Mh):Promise.resolve());function Oh(t,e){let n=md(t).then(e);return Ph.set(t,n.catch(()=>{})),n}async function Ux(t){!G(t)||t.theirs||await Fh(t,t.shipped||!t.file?Mh:Lh)}async function Fh(t,e){v(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof w&&v(t,{failed:L(n.complaint)}),n}}async function Mh(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,r=e.written(o),l=await Re({kind:e,name:e.new_name(t),text:rt(r),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>No(t,m),is_own:({text:m})=>i!==void 0&&nd(r,wt(m)??{})}),d=JSON.parse(l.text),c=od(r,d),p=t.now===o?d:c(t.now);Yn(e,n),v(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),G(t)&&No(t),i!==void 0&&yt("copied",{file:t,from:i,renamed:c})}async function Lh(t){let{version:e,now:n}=t,o=rt(t.kind.written(n));v(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{He(t.file);let i=await hi({file:t.file,version:e,text:o});Gn(t.file,i.version),Dr(t,n,i.version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Gn(t.file,e),Bh(t,i.answer),G(t)&&!t.theirs&&await Lh(t)}}function Dr(t,e,n){v(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),G(t)?No(t):Yn(t.kind,t.id),Eo(t.kind,t.file,e)}function Bh(t,{version:e,text:n}){if(n===rt(t.kind.written(t.now)))return Dr(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(v(t,{unanswered:[]}),o)return v(t,{version:e,saved:void 0,theirs:void 0});let i=G(t)||t.theirs?void 0:wt(n);i?zx(t,i,e):Ih(t,{version:e,text:n})}function zx(t,e,n){yt("giving_way",{file:t}),v(t,{set_aside:t.now,is_taken:!0,now:e}),Dr(t,e,n),D(`${t.file} was changed outside this page, and stands here as it is now.`),yt("gave_way",{file:t})}function Ch(t,{version:e,text:n}){let o=wt(n);!o||t.theirs||G(t)||(yt("giving_way",{file:t}),v(t,{now:o}),Dr(t,o,e),yt("gave_way",{file:t}))}var Wh=t=>v(t,{set_aside:void 0,is_taken:void 0});function Ih(t,{version:e,text:n}){v(t,{theirs:{version:e,text:n}}),No(t),D(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),yt("conflict",{file:t})}function Eh(t){if(!t.theirs)return;let e=wt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return v(t,{failed:n})}yt("giving_way",{file:t}),v(t,{set_aside:t.now,now:e}),Dr(t,e,t.theirs.version),yt("gave_way",{file:t})}function Nh(t){t.theirs&&(v(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),No(t),yt("unwritten",{file:t}))}var Ho=({theirs:t})=>t?.text===null;function jh(t){Ho(t)&&(Yn(t.kind,t.id),v(t,{saved:t.now,theirs:void 0,failed:void 0}),D(`${t.file} stays deleted.`),yt("left_deleted",{file:t}))}function Hh(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;f({typed:void 0}),Ct(t,e),v(t,{set_aside:o?void 0:n})}var qh=t=>(t.theirs??t).version;function Uh(t,e){v(t,{id:e,file:e}),yt("renamed",{file:t,renamed:n=>n})}async function zh(t){let{version:e,text:n}=await qt(t.file),o=wt(n);if(!o||t.theirs||e===t.version)return;let i=od(t.now,o);if(G(t))return v(t,{version:e,now:i(t.now),saved:o});v(t,{version:e,now:o,saved:o}),yt("renamed",{file:t,renamed:i})}var Kh=t=>t.shipped||!t.file?[]:[[t.file,qh(t)]];async function fd(t,e,n,o){let i=t.file,r=()=>qh(t)===e&&t.file===i;if(!r()||(await md(t),!r()))return!1;o(),await hd();let l=await Kx(i,n);return await md(t),r()&&(Bh(t,l),G(t)&&!t.theirs&&yt("unwritten",{file:t})),!0}async function Kx(t,e){let n=await e(t);return n===null?{version:n,text:null}:qt(t)}var hd=()=>new Promise(t=>setTimeout(t,Nx));var Jx=400,Vx=2e3,_d=new WeakMap;function Vh(t,e){clearTimeout(_d.get(t)),_d.set(t,window.setTimeout(()=>{ln(t)},e))}var Xn=(t=a.run)=>Vh(t,Jx),Qx=t=>t===a.run||t===a.order?.open;async function ln(t=a.run){clearTimeout(_d.get(t));try{await an(t),G(t)&&!t.theirs&&Qx(t)&&Xn(t)}catch(e){if(!(e instanceof w))throw e;e.may_pass&&Vh(t,Vx)}}async function fe(){for(let t of[a.run,a.order?.open])t?.file&&G(t)&&await ln(t)}var Jh=Promise.resolve(),gd=0;function Se(){if(!gd&&!Gx().length)return;++gd;let t=Jh.then(Yx).finally(()=>--gd);return Jh=t.catch(()=>{}),t}var Gx=()=>[...ht.map(t=>a.formulas[t]),...St.map(t=>a.beside[t])].filter(t=>t!==void 0&&G(t)&&!t.theirs);async function Yx(){for(let t of ht){let e=a.formulas[t];!e||!G(e)||e.theirs||(e.shipped&&t!=="apart"&&await Zn(a.run),await an(e))}for(let t of St){let e=a.beside[t];e&&G(e)&&!e.theirs&&await an(e)}}var qe=t=>Dn(a.run.file,t);function re(t,e){let n=qe(t);return e?.some(o=>o.file===n)?n:t}function Qh(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=re(String(n?.mould??""),a.files?.moulds);return{file:bi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:r,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...Zx(e)}}}function Zx(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}function Wt(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}var un=({lines:t})=>Array.isArray(t)?t:[];function Fn(t){let e=un(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Ae=new Map,Pr=new Set,Xx={changed:{},unreadable:[]},dn=()=>new Set([...ht.flatMap(t=>a.formulas[t]??[]),...St.flatMap(t=>a.beside[t]??[])]);function vi(){let t=eT(),e=new Set([...dn()].map(({file:o})=>o));for(let o of Ae.keys())!t.has(o)&&!e.has(o)&&Ae.delete(o);for(let o of Pr)t.has(o)||Pr.delete(o);let n=[...t].filter(o=>!Ae.has(o));return n.length?tT(n):void 0}async function tT(t){for(let[e,n]of await Gh(t))Ae.has(e)||Ae.set(e,n)}async function Gh(t){let e=t.filter(o=>!Pr.has(o)),n=e.length?await Po(new Map(e.map(o=>[o,null]))):Xx;return yd(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var bd=async t=>(await Gh([t])).get(t)??null,wd=()=>new Map([...Ae].filter(([t])=>!Pr.has(t)));function eT(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(qe(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(qe("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of dn()){let r=i.own_fats;typeof r=="string"&&r&&t.add(oe(o)+r).add(r)}e($(a.beside.studio?.now,"/own_tips"));for(let o of nT())t.add(o);for(let o of St)t.delete(a.beside[o]?.file??"");return t}function nT(){let{open:t}=a.order??{},e=new Set(t?un(t.now).map(({run:p})=>Dn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(Dn(t.file,"studio.json")),e.delete(a.run.file),e}function Yh(t,{changed:e}){let n=Object.keys(e).filter(o=>Ae.has(o)&&Ae.get(o)===t.get(o));for(let o of n)Ae.set(o,e[o]);return n}var yd=t=>t.forEach(e=>Pr.add(e));function Zh(){return[...dn()].flatMap(({file:t,version:e})=>{let n=Ae.get(t)??e;return Ae.delete(t),n===e?[]:[t]})}var Xh=0,qo=()=>Xh;function vd(t){++Xh;for(let{file:e}of dn())t.includes(e)&&$d.add(e);f({is_old:!0,changed_beside:tg(a.changed_beside,t)})}var $d=new Set,tg=(t,e)=>[...new Set([...t,...e])];function eg(){if(!a.changed_beside.length)return;let t=a.changed_beside.filter(e=>!$d.has(e)&&!Ah(e,Ae.get(e)??null));$d.clear(),f({changed_beside:[]}),t.length&&(f({taken_in:{files:tg(a.taken_in?.files??[],t),since:Date.now()}}),D(kd()))}function kd(){let{files:t=[]}=a.taken_in??{};if(!t.length)return"";let[e,n,o]=t.length===1?["was","it","it is"]:["were","them","they are"];return`${Wt(t)} ${e} changed outside this page: the figures are of ${n} as ${o} now.`}var oT=5e3;function ng(){a.taken_in&&Date.now()-a.taken_in.since>oT&&f({taken_in:void 0})}var iT=1e3,rT=450,_a=!1,Uo=!1,xd=0;function st(){f({is_old:!0}),_a?Uo=!0:ki()}async function ki(){if(_a){Uo=!0;return}_a=!0,og(!1);try{do Uo=!1,await sT();while(Uo)}finally{_a=!1,og(!0)}}async function rg(){let{run:t}=a,e={file:t.file,run:t.now},n=await If(e)?.catch(()=>{});!n||t!==a.run||a.plan||Dh()||(f({plan:n,planned:e}),cd(n))}var og=t=>{document.documentElement.dataset.settled=String(t)};function ig(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function sT(){let t=ig();try{let e=Se();e&&await e;let n=vi();n&&await n,t=ig();let{apart:o}=a.formulas;if(On(o?"apart":"run"))return f({is_old:!0});let i=qo(),r=o?Qh(o.file):{file:a.run.file,run:a.run.now},l=await Qs(r);if(window.clearTimeout(xd),!t())return void(Uo=!0);f({plan:l,planned:r,complaint:void 0}),cd(l);let d=i===qo();f({is_old:Uo||!d}),d&&eg()}catch(e){if(!(e instanceof w))throw e;if(!t())return void(Uo=!0);aT(e)}}function aT(t){f({is_old:!0}),window.clearTimeout(xd);let e=()=>{f({complaint:t.complaint}),Rh(t.complaint)};a.complaint||!a.plan?e():xd=window.setTimeout(e,rT),t.may_pass&&window.setTimeout(st,iT)}var sg=2e3,he=t=>f({bench:{...a.bench,...t}}),lT=()=>he({acts:me()});addEventListener("storage",({key:t})=>{t===yi()&&lT()});function $a(){let{file:t}=a.run;!t||a.bench.run===t||(f({bench:{run:t,batches:[],complaints:[],acts:me()}}),Mn().then(Sd))}function ag(t){let{file:e}=a.run;kh(t,e),a.bench.run===t&&he({run:e,acts:me()}),a.bench.run===e&&Mn()}function lg(){let{run:t,version:e}=a.bench;return e===void 0||t!==a.run.file?void 0:{run:t,version:e}}var Or=0;async function Mn(){let{run:t}=a.bench,e=Or;try{let n=await dh(t);if(t!==a.bench.run)return;if(e!==Or)return await Mn();ug(n)}catch(n){if(!(n instanceof w))throw n;if(t!==a.bench.run)return;he({failed:L(n.complaint)}),dg(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Mn(),sg)}}var ug=({batches:t,version:e,complaints:n=[]})=>he({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),dg=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),to=t=>a.bench.batches.find(e=>e.batch===t),Rd=t=>a.bench.acts.filter(({run:e,batch:n})=>e===a.bench.run&&n===t),eo=t=>Rd(t).length>0;function no(t,e){let n=Rd(t).find(i=>i.key===e),o=to(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function zo(t){let e=Rd(t).find(n=>n.reading!==void 0);return(e?e.reading:to(t)?.weigh_cup)??""}function cg(t,e,n){let{run:o}=a.bench,r=to(t)!==void 0||!a.planned?void 0:rt(a.planned.run);vh({run:o,batch:t,seen:e,text:r,...n}),he({acts:me(),chosen:t,told:void 0}),Sd()}var pg=(t,e,n,o)=>cg(t,e,{key:n,done:o}),mg=(t,e,n)=>cg(t,e,{reading:n||null}),Td=!1;async function Sd(){if(!Td){Td=!0;try{await navigator.locks.request(yi(),uT)}finally{Td=!1}me().length&&setTimeout(()=>{Sd()},sg)}}async function uT(){for(let t=ld();t;t=ld())if(!await dT(t))return}async function dT(t){let{id:e}=t;try{let n=await cT(t);return++Or,ca(o=>o.id===e),pT(n,t.run),!0}catch(n){if(!(n instanceof w))throw n;return dg(n)?(he({unsent:L(n.complaint)}),!1):(await mT(t,n),!0)}}function cT({run:t,text:e,batch:n,seen:o,key:i,done:r,reading:l}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?ch({...d,key:i,done:r??!1}):ph({...d,reading:l??null})}function pT(t,e){let n=me();if(e!==a.bench.run)return he({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==t.batch),t].sort((r,l)=>r.batch-l.batch);he({acts:n,batches:i,unsent:void 0})}async function mT(t,{complaint:e}){++Or,ca(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${L(e)}.`;he({acts:me(),unsent:void 0,told:{batch:t.batch,words:n}}),D(n),st(),await Mn()}async function Fr(t){let{run:e}=a.bench;await fg(t,async()=>{let n=await mh(e,t);return ca(o=>o.run===e&&o.batch===t),n})}var Ad=t=>fg(t,()=>fh(a.bench.run,t));async function fg(t,e){let{run:n}=a.bench;try{let o=await e();if(++Or,n!==a.bench.run)return;ug(o),he({acts:me(),told:void 0,chosen:t})}catch(o){if(!(o instanceof w))throw o;he({told:{batch:t,words:L(o.complaint)}})}}var hg=t=>he({chosen:t,told:void 0}),gg=()=>he({told:void 0});var fT=300,hT=1200,ba="",_g=0;function Mr(){let t={run:{file:a.run,now:a.run.now}};for(let e of ht){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of St){let n=a.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Ko(t=""){let e=performance.now();t&&t===ba&&e-_g<=hT&&a.past.length||Dd(Mr()),f({future:[]}),ba=t,_g=e}var Dd=t=>f({past:[...a.past,t].slice(-fT)});function oo(t){Dd($g(Mr(),t,()=>t.saved??{}))}function $g(t,e,n){let o=Object.entries(t).map(([i,r])=>r.file===e?[i,{file:e,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Pd(t,e){let n=o=>o.map(i=>$g(i,t,e));f({past:n(a.past),future:n(a.future)})}function Lr(){let t=a.past.at(-1);t&&(f({past:a.past.slice(0,-1),future:[...a.future,Mr()]}),bg(t,"Undone"))}function Od(){let t=a.future.at(-1);t&&(f({past:[...a.past,Mr()],future:a.future.slice(0,-1)}),bg(t,"Redone"))}function bg(t,e){ba="",f({typed:void 0});for(let n of[...St,...ht,"run"])gT(n,t);D(e)}function gT(t,e){let n=e[t];if(pa(t))return _T(t,n);let o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&Pn(t,n.file),n.file.now!==n.now&&Ct(n.file,n.now))}function _T(t,e){e&&e.file===a.beside[t]&&e.file.now!==e.now&&Ct(e.file,e.now)}var xi=t=>t===a.run||ht.some(e=>a.formulas[e]===t)||St.some(e=>a.beside[e]===t);je("giving_way",({file:t})=>{xi(t)&&(ba="",Dd(Mr()),f({typed:void 0}))});for(let t of["copied","renamed"])je(t,({file:e,renamed:n})=>Pd(e,n));var $T=1200,Fd="",wg=0;function Ti(t,e=""){let n=performance.now(),o=e&&e===Fd&&n-wg<=$T&&t.past.length;v(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[Fd,wg]=[e,n]}function wa(t){let e=t.past.at(-1);e&&(v(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),yg(t,e,"Undone"))}function ya(t){let e=t.future.at(-1);e&&(v(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),yg(t,e,"Redone"))}function yg({open:t},e,n){Fd="",f({typed:void 0}),Ct(t,e),D(n)}function io(t){return t==="run"?a.run:t==="order"?a.order?.open:pa(t)?a.beside[t]:a.formulas[t]}var bT=t=>io(t)?.now,g=(t,e)=>$(bT(t),e),O=(t,e)=>String(g(t,e)??"");function et(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function gt(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function vg(t,e){t==="order"&&a.order?Ti(a.order,e):Ko(e===void 0?"":`${t} ${e}`)}function Z(t,e,n){let o=io(t);!o||$(o.now,e)===n||(vg(t,e),Ct(o,M(o.now,e,n)))}function kg(t,e){let n=io(t);n&&(vg(t),f({typed:void 0}),Ct(n,e(n.now)))}function Ue(t){Ko(),f({typed:void 0});for(let[e,n]of t){let o=io(e);o&&Ct(o,n(o.now))}}var Ld=(t,e)=>{let{[t]:n,...o}=a.beside;f({beside:e?{...o,[t]:e}:o})};function va(t){for(let e of St)a.beside[e]===t&&Ld(e,void 0)}async function wT(t,e){try{return await Bt(t,e)}catch(n){if(!(n instanceof w||n instanceof SyntaxError))throw n;return}}async function ro(t,e,n,o=()=>!0){let i=()=>a.beside[t]?.file===n?a.beside[t]:void 0;if(i())return i();let r=await wT(e,n);return i()||!o()?i():(Ld(t,r),r&&G(r)&&(oo(r),yt("unwritten",{file:r})),r?.theirs&&yt("conflict",{file:r}),r)}var Md=()=>qe("studio.json");async function Ri(t=!1){let e=Md(),n=(a.files?.studios??[]).some(o=>o.file===e);a.beside.studio?.file!==e&&(n||t?await ro("studio",Tr,e,()=>e===Md()):Ld("studio",void 0))}async function ka(){a.run.shipped&&await Zn(a.run);let t=Md();await ro("studio",Tr,t)||(await yT(t),await ro("studio",Tr,t))}async function yT(t){try{He(t);let{version:e}=await hi({file:t,version:null,text:rt({schema:"brimwright.studio/1"})});Gn(t,e)}catch(e){if(!(e instanceof w)||e.status!==409)throw e}Eo(Tr,t)}var xg=(t,e)=>oe(t.file)+e;async function vT(t){try{return wt((await qt(t)).text)!==void 0}catch(e){if(!(e instanceof w))throw e;return!1}}async function xa(t){let e=a.formulas[t];if(!e)return;e.shipped&&await Zn(e);let n=String($(e.now,"/own_fats")??"");if(n){let l=xg(e,n);return ro("own_fats",sn,await vT(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&oe(l.file)===oe(e.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Cd(sn,xg(e,"my.fats.json"),i);return Z(t,"/own_fats",pe(r)),ro("own_fats",sn,r)}async function Bd(){a.run.shipped&&await Zn(a.run);let t="/pipe/beads/own_tips",n=String($(a.run.now,t)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return ro("own_tips",Qn,qe(n));let o=oe(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&oe(d.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Cd(Qn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",pe(l)):Z("run",t,pe(l)),ro("own_tips",Qn,l)}async function Br(t,e){await ro(t===sn?"own_fats":"own_tips",t,e)&&f({held_open:e})}function so(){let{view:t,held_open:e,beside:n}=a,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function Ta(t,e){let n=t===sn;await Br(t,await Cd(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function Cd(t,e,n){let{file:o}=await Re({kind:t,name:e,text:rt(n)});return Eo(t,o),o}function Tg(t,e){let n=(i,r)=>String($(i,r)??"").endsWith(pe(e));for(let i of ht)t===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,t.file)}var Jo=[],Si=[],Cr=()=>Jo.at(-1),Id=()=>Si.at(-1);function Aa(t){Jo=[...Jo,t],Si=[],f({list_told:t.words}),D(t.words)}async function Ag(){let t=Cr();t&&(await t.undo(),Jo=Jo.slice(0,-1),Si=[...Si,t],f({list_told:""}),D("Undone"),await De())}async function Dg(){let t=Id();t&&(await t.redo(),Si=Si.slice(0,-1),Jo=[...Jo,t],f({list_told:t.words}),D("Redone"),await De())}async function De(){let[t,e]=await Promise.all([Vs(),_f()]);f({files:t,removed:e})}async function Pg(t,e){let{$schema:n,...o}=JSON.parse((await qt(e.file)).text),i=`${e.name||Vo(e.file)}, copy`,r={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},l=t.called?t.new_name(jo(t,r)):Ne(i,Ed(e.file)),{file:d}=await Re({kind:t,name:l,text:rt(r),from:e.file});await De();let c="";return Aa({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await Ra(d,!0),redo:()=>Sa(d,c)}),d}var Ed=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",Vo=t=>pe(t).slice(0,-Ed(t).length||void 0),Og=(t,e)=>oe(t)+e+Ed(t),Rg=t=>[a.run,a.order?.open,...ht.map(e=>a.formulas[e]),...St.map(e=>a.beside[e])].find(e=>e?.file===t);async function Fg(t,e,n){let o={name:e.name,note:e.note,stem:Vo(e.file)};await Wd(t,e.file,n),await De();let i=Og(e.file,n.stem);Aa({words:`Changed ${n.name||i}.`,undo:()=>Wd(t,i,o),redo:()=>Wd(t,e.file,n)})}async function Wd(t,e,{name:n,note:o,stem:i}){let r=Rg(e),l=r??await Bt(t,e),d={name:String((t.called&&l.now[t.called])??""),note:String(l.now.note??""),stem:Vo(e)},{note:c,...p}=l.now,m={...p,...o&&{note:o}},_=t.called?M(m,`/${t.called}`,n||void 0):m;if(rt(_)!==rt(l.now)&&(r&&xi(r)&&Ko(),r===a.order?.open&&a.order&&Ti(a.order),Ct(l,_),await an(l),l.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let b=Og(e,i);if(b===e)return Sg(e,d,{name:n,note:o,stem:i});[e,b].forEach(He);let{renamed_in:y}=await ff(e,b);yh(t,e,b),Sg(b,d,{name:n,note:o,stem:i}),y.forEach(He),r&&Uh(r,b);for(let T of y){let J=Rg(T);J&&await zh(J)}}function Sg(t,e,n){let o=a.list_open;if(o?.file!==t)return;let i=r=>o[r]===e[r]?n[r]:o[r];v(o,{name:i("name"),note:i("note"),stem:i("stem")})}async function Ra(t,e){He(t);let{removed:n}=await hf(t,e);a.run.file===t&&wi(),a.order?.open.file===t&&f({order:void 0});let o=St.map(i=>a.beside[i]).find(i=>i?.file===t);return o&&va(o),n}function Sa(t,e){return He(t),gf(e)}async function Mg(t,e){let n=await Ra(t.file,e);await De(),Aa({words:`Removed ${t.name||t.file}.`,undo:()=>Sa(t.file,n),redo:async()=>n=await Ra(t.file,!0)})}async function Lg({removed:t,file:e,name:n}){await Sa(e,t),await De();let o="";Aa({words:`${n||e} is back.`,undo:async()=>o=await Ra(e,!0),redo:()=>Sa(e,o)})}async function Bg({removed:t,file:e,name:n}){f({removed:await $f(t),list_told:""}),D(`${n||e} is deleted for good.`)}var Cg=0;function At(){let t=++Cg;return()=>t===Cg}function Wg(t){let e=$(a.run.now,`/${t}/formula`);return typeof e=="string"&&e?re(e,a.files?.formulas):void 0}async function ao(){await Promise.all(["pour","pipe"].map(kT))}async function kT(t){let e=Wg(t),n=()=>e!==void 0&&a.formulas[t]?.file===e;if(n()||(Pn(t,Ig(e)),e===void 0||n()))return;let o=await xT(e);if(!o||Wg(t)!==e||n())return;let i=Ig(e);Pn(t,i??o),!i&&(G(o)&&(oo(o),yt("unwritten",{file:o})),o.theirs&&yt("conflict",{file:o}))}var Ig=t=>ht.map(e=>a.formulas[e]).find(e=>e&&e.file===t),Nd=new Map;function xT(t){let e=Nd.get(t)??Bt(Io,t).catch(TT);return Nd.set(t,e),e.finally(()=>Nd.delete(t))}function TT(t){if(!(t instanceof w||t instanceof SyntaxError))throw t}var Wr=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Ai(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=r=>20+e+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:d,material:c}]})=>({name:r,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function Ng(t,e,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],y=3*c[p+(_+1)%3],T=d[b+i]-e,J=d[y+i]-e;if(T>0==J>0)continue;let Ht=T/(T-J),Do=[1e3*(d[b]+Ht*(d[y]-d[b])),1e3*r*(d[b+o]+Ht*(d[y+o]-d[b+o]))];T>0?m.push(Do):m.unshift(Do)}m.length===2&&l.push([m[0],m[1]])}return l}function jg(t){let e=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of t){let r=e(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of t){let r=[],l=n.get(e(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(e(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Ir(t){let e=t.positions,[n,o,i,r,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),r=Math.max(r,e[p]),l=Math.min(l,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:jg(Ng(t,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function Hg(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(r=>jg(Ng(t,n+r*o,"level"))).reduce((r,l)=>Eg(l)>1.001*Eg(r)?l:r)}function Eg(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function jd(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([r,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>e||Math.max(l,p)<e))for(let m of l===p?[r,c]:[r+(e-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var qg=40,RT=2e3,Hd=0;async function Ug(t){let e=await rn({kind:"glb",gauge:t}),n=Ai(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Di(t){let[e,n]=await Promise.all([on(t),Ug(t)]),o=Ir(n);return{gauge:e,outline:o,above:Hg(n,o)}}async function ST(t){let{pockets:e}=await on(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:qg},(i,r)=>`${(n*(r+1)/qg).toFixed(4)} mm`);return on({...t,depth:o})}function ze(){AT()}async function AT(){let t=$(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Hd,n=re(t,a.files?.moulds);try{let[o,i]=await Promise.all([ST({file:n}),Ug({file:n})]);e===Hd&&f({measured:{mould:n,gauge:o,outline:Ir(i)},measuring_failed:void 0})}catch(o){if(e!==Hd)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ze,RT)}}var qd=(t,e="")=>Tn("GET",`/api/record?run=${encodeURIComponent(t)}&batch=${encodeURIComponent(e)}`),zg=t=>ke("/api/record/begin",t),Da=t=>ke("/api/record/note",t);var DT=1e4,zd=2500,Kd=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Kd);var Pa=[],Pi=()=>`notes ${a.files?.folder??""}`;function Ln(){try{return[...JSON.parse(localStorage.getItem(Pi())??"[]"),...Pa]}catch{return Pa}}function Jd(t){try{t.length?localStorage.setItem(Pi(),JSON.stringify(t)):localStorage.removeItem(Pi()),Pa=[]}catch{Pa=t}}var Ud=(t,e)=>t.batch===e.batch&&t.key===e.key,cn=(t,e)=>a.record.acts.filter(n=>Ud(n,{batch:t,key:e})).at(-1);function Kg(t){let e=Ln(),n=e.filter(i=>Ud(i,t)).at(-1),o={...t,seen:n?.seen??t.seen,id:crypto.randomUUID(),tab:Kd,at:Date.now()};Jd([...e.filter(i=>!Ud(i,t)||i.was_sent&&!i.refused),o])}var Vd=t=>Jd(Ln().map(t)),Oa=(t,e)=>Vd(n=>n.id===t?{...n,...e}:n),Er=t=>Jd(Ln().filter(e=>!t(e))),PT=({is_typed:t,lacks:e,refused:n,at:o})=>!n&&!e&&(!t||Date.now()-o>=zd),Qd=()=>Ln().find(t=>PT(t)&&(t.tab===Kd||Date.now()-t.at>DT));var Jg=2e3,zt=t=>f({record:{...a.record,...t}}),Oi=()=>zt({acts:Ln()});addEventListener("storage",({key:t})=>{t===Pi()&&Oi()});function uo(){let{file:t}=a.run;!t||a.record.run===t||(f({record:{run:t,batches:[],acts:Ln(),chosen:OT(t)}}),lo().then(Nr))}function Vg(t){a.record.run===t&&(zt({run:a.run.file}),lo())}var Qg=t=>`record ${t}`,OT=t=>sessionStorage.getItem(Qg(t))??void 0,Zd=()=>a.record.run===a.run.file?a.record.version:void 0,Yd=0;async function lo(){let{run:t,chosen:e}=a.record,n=Yd;try{let o=await qd(t,e);if(t!==a.record.run)return;if(n!==Yd||e!==a.record.chosen)return await lo();let{batches:i,run_batches:r}=o.record;zt({batches:i,of:r??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof w))throw o;if(t!==a.record.run)return;zt({failed:L(o.complaint)}),Gg(o)&&setTimeout(()=>a.record.failed!==void 0&&void lo(),Jg)}}var Gg=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);function Fa({record:t},e){if(++Yd,e!==a.record.run)return;let n=new Set(t.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>t.batches.find(({begun:c})=>c.id===d.begun.id)??d,r=t.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...r];zt({batches:l,of:t.run_batches??a.record.of})}function Ma(){let{batches:t,chosen:e}=a.record;return t.find(({begun:n})=>n.id===e)??t.at(-1)}var Xd=(t,e)=>sessionStorage.setItem(Qg(t),e);function Qo(t){Xd(a.record.run,t),zt({chosen:t}),lo()}var Go=(t,e)=>a.record.batches.filter(n=>n.number===t&&(!e||new Date(n.begun.begun_at)>=new Date(e))).at(-1),La=({pieces:t,written:e})=>`${t} ${t===1?"piece":"pieces"}, ${e}`;function Ba({blanks:t,cured:e,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],r=i&&e?.find(({on:l})=>l===i);return i?r?La(r):"":[...t??[],...n??[]].find(l=>l.key===o)?.noted??""}function tc(t,{key:e,text:n,value:o,is_left:i,lacks:r}){let l=Ba(t,e),d=cn(t.begun.id,e);if(o===l&&!r&&(!d||!d.was_sent&&d.seen===l))return d&&Er(({id:m})=>m===d.id),Oi();if(d?.value===o&&!d.lacks==!r&&(d.refused??!d.is_typed))return;let{run:p}=a.record;Kg({run:p,batch:t.begun.id,key:e,text:n,value:o,seen:l,is_typed:!i,lacks:r}),Oi(),i?Nr():setTimeout(()=>{Nr()},zd+50)}var co=(t,e,n)=>tc(t,{key:e,text:n,value:n,is_left:!0});function Yg(t){let{refused:e,value:n}=t;if(!e)return;let{answers:o={confirmed:n}}=e,i=(l=[],d)=>d===void 0?l:[...l,d],r=e.is_asked?{confirmed:i(t.confirmed,o.confirmed),beyond:i(t.beyond,o.beyond)}:{seen:e.noted??t.seen};Oa(t.id,{...r,refused:void 0}),Oi(),Nr()}function Zg(t){Er(({id:e})=>e===t.id),Oi()}var Gd=!1;async function Nr(){if(!Gd){Gd=!0;try{await navigator.locks.request(Pi(),FT)}finally{Gd=!1}Ln().some(t=>!t.refused&&!t.lacks)&&setTimeout(()=>{Nr()},Jg)}}async function FT(){for(let t=Qd();t;t=Qd())if(!await LT(t))return}var MT=({batch:t,run:e})=>a.record.batches.some(({begun:n})=>n.id===t)?a.record.run:e;async function LT(t){let{id:e,batch:n,key:o,value:i,seen:r,confirmed:l,beyond:d}=t,c=MT(t);Oa(e,{was_sent:!0});try{let p=await Da({run:c,batch:n,act:e,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l,"beyond-stock":d});return Er(m=>m.id===e),BT(t,p),Fa(p,c),zt({acts:Ln(),unsent:void 0}),!0}catch(p){if(!(p instanceof w))throw p;return Gg(p)?(zt({unsent:L(p.complaint)}),!1):(await CT(t,p),!0)}}function BT({batch:t,key:e},{record:n}){let o=n.batches.find(({begun:i})=>i.id===t);Vd(i=>i.batch!==t?i:i.key===e?o?{...i,seen:Ba(o,e)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function CT({id:t,value:e},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?r:L(n);d===e?Er(p=>p.id===t):Oa(t,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:d,...WT(i)}}),Oi(),await lo()}function WT(t=[]){let e=t[0]?.confirmed,n=t[0]?.["beyond-stock"];return e===void 0&&n===void 0?{}:{answers:{confirmed:e,beyond:n},is_lye:e===IT}}var IT="lye-heavy",Ca=t=>a.record.acts.filter(e=>e.batch===t&&(e.refused??e.lacks)).length;async function Wa(t,e){if(!t||!e)return;let n=t.blanks?t:await ET(t.begun.id),o=n?.blanks?.filter(ec)??[];n&&o.length===1&&co(n,o[0].key,e)}async function ET(t){try{return(await qd(a.record.run,t)).record.batches.find(({begun:e})=>e.id===t)}catch(e){if(!(e instanceof w))throw e;return}}var ec=({key:t})=>/^topping(-\d+)?\.cup$/.test(t);var NT=()=>a.view==="order",nc=()=>NT()?a.recorded:void 0,oc=t=>f({recorded:t});async function Ia(){if(a.recorded!==void 0)return;let{stock:t}=await Po(new Map,{stock:""});t!==void 0&&a.recorded===void 0&&oc(t)}var Xg=()=>Tn("GET","/api/stock?names"),t_=t=>ke("/api/stock/act",t),e_=t=>Tn("GET",`/api/trail?of=${encodeURIComponent(t)}`);var jT=2e3,Bn=t=>f({stock:{...a.stock,...t}}),n_=()=>a.view==="shelf"||a.view==="trail",ic=()=>n_()?a.stock.version:void 0,HT=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);async function po(){try{let{version:e,stock:n}=await Xg();Bn({version:e,list:n,failed:void 0})}catch(e){if(!(e instanceof w))throw e;Bn({failed:L(e.complaint)}),HT(e)&&setTimeout(()=>n_()&&a.stock.failed!==void 0&&void po(),jT)}let{trail:t}=a.stock;a.view==="trail"&&t&&await o_(t.of)}function Xt(t,e){let n=a.stock.trail?.of===t;f({view:"trail",stock:{...a.stock,trail:{...n&&a.stock.trail,of:t,order:e}}}),a.stock.version===void 0?po():o_(t)}async function o_(t){let e=n=>{let o=a.stock.trail;o?.of===t&&Bn({trail:{of:t,order:o.order,...n}})};try{let{version:n,trail:o}=await e_(t);e({trail:o}),Bn({version:n})}catch(n){if(!(n instanceof w))throw n;let{problem:o,choices:i=[]}=n.complaint,r=i.flatMap(({what:l})=>l??[]);e(r.length?{complaint:`${o}: which is meant?`,choices:r}:{complaint:L(n.complaint)})}}var i_=()=>`shelf ${a.files?.folder??""}`;function rc(t){sessionStorage.setItem(i_(),JSON.stringify(t)),Bn({forms:t})}function r_(){try{Bn({forms:JSON.parse(sessionStorage.getItem(i_())??"[]")})}catch{Bn({forms:[]})}}var sc=(t,e)=>t.kind===e.kind&&t.of===e.of,Cn=t=>a.stock.forms.find(e=>sc(e,t));function ac(t){if(Cn(t))return;let e={on:qT(),...t.typed};rc([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...t,typed:e}]),Bn({told:void 0})}var lc=t=>rc(a.stock.forms.filter(e=>!sc(e,t))),Fi=(t,e)=>rc(a.stock.forms.map(n=>sc(n,t)?{...n,...e}:n)),Ke=(t,e)=>Fi(t,{...e,typed:{...t.typed,...e.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Yo(t,e,n){Fi(t,{complaint:{file:"",field:e,problem:n,remedy:"",line:n}}),D(n)}async function Ea(t,e){let n=Cn(t);if(!n||n.is_asking)return!1;Fi(t,{is_asking:!0,complaint:void 0});try{let{stock:o}=await t_({...e,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return lc(t),Bn({told:{of:t.of,sentences:i}}),D(i.join(" ")),await po(),!0}catch(o){if(!(o instanceof w))throw o;return Fi(t,{is_asking:!1,complaint:o.complaint}),D(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await po(),!1}}function s_(t,e){Fi(t,{confirmed:[...t.confirmed,e],complaint:void 0})}var a_=(t,e)=>Fi(t,{seen:e,complaint:void 0});function qT(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var jr=()=>f({own_fats:{}});function mo(t){let e=Hr(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function Hr(t){let e=a.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=a.beside.own_fats;if(o&&[oe(e.file)+n,n].includes(o.file))return u_(o.now)??"none";let i=`${e.file}
${n}`,r=a.own_fats[i];return r||(l_(i,"waiting"),UT(n,e.file).then(l=>l_(i,l)),"waiting")}var l_=(t,e)=>f({own_fats:{...a.own_fats,[t]:e}});async function UT(t,e){for(let n of new Set([oe(e)+t,t])){let o=u_(await zT(n));if(o)return o}return"none"}var u_=t=>Array.isArray(t?.fats)?t.fats.map(KT):void 0;async function zT(t){try{return wt((await qt(t)).text)}catch{return}}var KT=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:JT(n)});function JT(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Mi=[],qr;function Na(){Mi.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Mi.push(t);qr===void 0&&d_()}function uc(t){let e=a.own_moulds[t];return!e&&t!==qr&&!Mi.includes(t)&&Mi.push(t),qr===void 0&&Mi.length&&d_(),e}async function d_(){for(;(qr=Mi.shift())!==void 0;){let t=qr,e=await QT(t);e&&f({own_moulds:{...a.own_moulds,[t]:e}})}}var VT=2e3;async function QT(t){try{let{pockets:e}=await on({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof w))throw e;if(e.may_pass){window.setTimeout(()=>uc(t),VT);return}let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var m_=()=>f({own_tips:{}}),dc=!1;function Ur(){return!a.tips&&!dc&&(dc=!0,Af().then(t=>f({tips:t}),f_).finally(()=>dc=!1)),a.tips??[]}function cc(t){let e=qe(t),n=a.beside.own_tips;if(n?.file===e)return p_(n.now);let o=a.own_tips[e];return o||!t||a.typed?o??[]:(c_(e,[]),qt(e).then(({text:i})=>c_(e,p_(wt(i))),f_),[])}var c_=(t,e)=>f({own_tips:{...a.own_tips,[t]:e}});function p_(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function f_(t){if(!(t instanceof w))throw t}var ja=300,GT=5e3,b_=2e3,YT=500,h_=!1,zr=new AbortController,Ha=()=>zr.abort(),w_=()=>document.visibilityState==="hidden";function qa(){if(h_)return;h_=!0;let t=async()=>{zr=new AbortController;let e=await ZT(zr).then(()=>w_()?GT:ja,()=>zr.signal.aborted?ja:b_);await g_(ja),await g_(e-ja,zr.signal),t()};t()}var g_=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),y_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...dn()],pc=()=>{let t=lg();return t&&{...t,record:Zd()}},mc=()=>ic()??nc(),v_=()=>new Map(y_().flatMap(Kh)),__=()=>JSON.stringify([[...v_().keys()],[...wd().keys()],pc()?.run??null,Zd()??null,mc()??null]);async function ZT(t){let e=Zh();e.length&&await $_(e);let[n,o]=[v_(),wd()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!w_()?await XT(i,t):await Po(i,{bench:pc(),stock:mc()});l.bench!==void 0&&await Mn(),l.record!==void 0&&await lo(),l.stock!==void 0&&await tR(l.stock),yd(l.unreadable),await eR(n,l);let d=Yh(o,r?l:await Po(o));d.length&&await $_(d)}async function XT(t,e){let[n,o]=[__(),Date.now()],i=window.setInterval(()=>{(__()!==n||Date.now()-o>bf+b_)&&e.abort()},YT);try{return await wf(t,{bench:pc(),stock:mc()},e.signal)}finally{window.clearInterval(i)}}async function tR(t){nc()!==void 0&&oc(t),ic()!==void 0&&await po()}async function eR(t,{changed:e}){let n=dn();for(let o of y_()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await nR(o,i):await fd(o,i,bd,()=>{}))}}async function nR(t,e){let n=!1,o=()=>{n=!0,vd([t.file])};try{await fd(t,e,bd,o)&&jr()}finally{n&&st()}}async function $_(t){vd(t);try{await hd(),jr(),m_(),f({measured:void 0}),ze(),Na(),await Promise.all([ao(),Ri(!0)])}finally{st()}}async function x_(t){let e=await Cf();f({files:e});let n=Bf(e,t.run);try{await Ua(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function hc(){try{let[t,e]=await Promise.all([Rf(),Sf()]);f({fats:t,catalogue:e})}catch(t){if(!(t instanceof w))throw t;t.may_pass?window.setTimeout(()=>{hc()},oR):f({fault:t.message})}}var oR=2e3,iR=()=>new Promise(t=>setTimeout(t,400)),fc={};function Wn(t,e){return At(),Ua(t,e)}async function Ua(t,e="weigh"){if(!t)return f({view:"runs"});let n=fc={name:t},o=a.view;a.run.file&&G(a.run)&&await ln();let i=await Bt(Co,t);if(fc!==n||(wi(i),$a(),await Promise.race([rg(),iR()]),a.run!==i))return;a.view===o&&fc===n&&f({view:e}),localStorage.setItem("run",i.file),G(i)&&(oo(i),Xn());let r=ki().finally(ze);await Promise.all([r,ao(),Ri()]),qa()}var k_=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function za(t){let e=At(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(i.cut={bar:{thickness:t.slice},...k_()?{}:{kerf:""}}),k_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:r}=await Re({kind:Co,name:Ne(t.name,".run.json"),text:rt(i)});e()&&(dt("set-up pour"),t.slice&&dt("set-up cut"),await Wn(r,"set-up"))}var rR="examples/plain_bars.run.json";function se(t){jr();let e=Rn(a.view)?a.view:a.came_from;f({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Kr(t){let e=At(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===t);if(n)return se(n);a.run.file||await Ua(rR,"reading");let o=await Bt(Io,t);e()&&sR(o)}function sR(t){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),Pn("apart",t),G(t)&&oo(t),f({plan:void 0,complaint:void 0}),se("apart"),ki()}async function aR(){let t=a.formulas.apart!==void 0;return await Ka()?(f({view:t?"weigh":a.came_from,typed:void 0}),!0):!1}async function Ka(){return a.formulas.apart?await lR()?(ki(),!0):!1:!0}async function lR(){try{await Se()}catch(e){if(!(e instanceof w))throw e;return f({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return D("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Pn("apart",void 0);let t={...a.dangers,apart:[]};return f({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function T_(t){let e=a.view==="formula"&&a.formulas[a.formula_of]===t,n=a.formulas.apart===t;for(let o of["pour","pipe"])a.formulas[o]===t&&Pn(o,void 0);n&&await Ka(),e&&f({view:n?"formulas":"set-up",typed:void 0})}async function gc(t){let{file:e}=a.formulas.apart;await aR()&&Z("run",`/${t}/formula`,e)}var uR=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),R_=t=>A_(uR(t));async function S_(t,e){let{$schema:n,...o}=JSON.parse((await qt(t)).text);await A_({...o,name:e},t)}async function A_(t,e){let n=At(),o=Ne(String(t.name),".formula.json"),{file:i}=await Re({kind:Io,name:o,text:rt(t),from:e});n()&&await Kr(i)}var dR=30,cR=2e3,D_=0,_c=!1,$c=!1;function bc(t,e,n){let o=e==="mesh"?a.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Ja()}var pn=()=>f({mould:void 0,mesh:void 0}),Li=(t,e,n)=>bc(jo(ie,t),e,n);async function P_(t,e){let n=At(),o=await Bt(ie,t,e?crypto.randomUUID():t);if(!n())return!1;let i=String(o.now.name??t);return e&&v(o,{now:{...o.now,name:""}}),bc(o,"form",e?`A copy of ${i}`:`Change ${i}`),!0}async function O_({id:t,file:e,text:n}){let o=At(),i=e?await Bt(ie,e,t):jo(ie,JSON.parse(n),t);return o()?(bc(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var it=()=>a.mould,z=()=>it().open.now;function Ft(t,e){Ti(it(),t),Ct(it().open,M(z(),t,e))}var F_=()=>wa(it()),M_=()=>ya(it()),pR=["name","note","owned","unmould_after"];function wc(t){let e=z(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!pR.includes(l)))&&v(it(),{is_old:!0});let i=n.some(l=>it().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(it().is_old||i||r)&&Ja()}function Ja(){clearTimeout(D_),D_=window.setTimeout(()=>{mR()},dR)}async function mR(){if(_c)return void($c=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!Ee(e,"shape")&&!Ee(e,"mesh"))){if(xr(e).length)return v(t,{complaint:void 0});_c=!0;try{let n=ie.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Di(o);t.open.now===e&&v(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;t.open.now===e&&t===a.mould&&yc(n),n.may_pass&&window.setTimeout(Ja,cR)}finally{_c=!1,$c&&Ja(),$c=!1}}}function yc(t){let{field:e,problem:n,remedy:o,keep:i,entry:r}=t.complaint,l=e?`${n}; ${o}`:t.message;v(it(),{complaint:{field:ua(z(),e),line:l,keep:i&&{...i,at:ua(z(),i.at)},about:r===void 0?void 0:ua(z(),`${e}/${r}`)}})}var L_={};async function Jr(t){At();let e=L_={name:t},n=a.view;if(a.order?.open.file!==t){a.order&&G(a.order.open)&&await ln(a.order.open);let o=await Bt(Wo,t);if(L_!==e)return;let i=G(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),G(o)&&Xn(o)}a.view===n&&f({view:"order",typed:void 0}),qa()}function B_(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function C_(t){let e=At(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},o=Wo.new_name(jo(Wo,n)),{file:i}=await Re({kind:Wo,name:o,text:rt(n)});e()&&await Jr(i)}var Mt=()=>a.order,W_=()=>wa(Mt()),I_=()=>ya(Mt());var Va=t=>Object.values(a.formulas).includes(t),Bi=t=>Object.values(a.beside).includes(t),E_=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function fR(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&ze(),E_(t)!==E_(e)&&ao(),st(),Xn()}var hR=st;function gR(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(pe(e))?M(r,o,t.file):r;Pd(a.run,i),i(a.run.now)!==a.run.now&&Ct(a.run,i(a.run.now))}}async function _R(t){t===a.run?(wi(),localStorage.removeItem("run"),f({view:"runs"})):t===a.mould?.open?pn():t===a.order?.open?B_():Bi(t)?va(t):await T_(t),await De(),a.run.file&&st()}function N_(){je("edited",({file:t,before:e})=>{ng(),t===a.run?fR(e,t.now):Va(t)||Bi(t)?hR():t===a.mould?.open?wc(e):t===a.order?.open&&Xn(t)}),je("gave_way",({file:t})=>{if(f({typed:void 0}),t===a.mould?.open)return wc();t!==a.order?.open&&(t===a.run&&(ze(),ao().then(st)),st())}),je("left_deleted",({file:t})=>{_R(t)}),je("unwritten",({file:t})=>{t===a.run||t===a.order?.open?ln(t):(Va(t)||Bi(t))&&st()}),je("conflict",({file:t})=>{(Va(t)||Bi(t))&&f({is_old:!0})}),je("renamed",({file:t})=>{Bi(t)&&a.held_open!==void 0&&f({held_open:t.file}),t===a.run&&(localStorage.setItem("run",t.file),ze(),ao()),st()}),je("copied",({file:t,from:e})=>{Va(t)&&gR(t,e),Bi(t)&&Tg(t,e),a.held_open===e&&f({held_open:t.file}),t===a.run&&(ag(e),Vg(e),localStorage.setItem("run",t.file),Ri().then(st))})}var ge=s`<span aria-hidden="true">⚠</span> Danger`;function Vr(t,e="",n){let o=fo(t,n);return o.length?s`<div class="dangers" id=${e||u}>
    ${o.map(i=>s`<p class="danger"><strong>${ge}</strong> ${i}</p>`)}
  </div>`:u}function fo(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function j_(){let t=de(a.view)||a.view==="order"||a.view==="trail"||Sr()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var H_=()=>j_().length>0;function q_(){let t=j_(),e=wR(),n=e||de(a.view)?"":kd();return!t.length&&!e&&!n?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?s`<div role="alert" class="dangers">
            ${t.map(({from:o,text:i})=>s`<p class="danger"><strong>${ge}</strong> ${o}${i}</p>`)}
          </div>`:u}
    ${e?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${$R()?s`<button type="button" @click=${bR}>To the question</button>`:u}
          </div>`:u}
    ${n?s`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:u}
  </section>`}var $R=()=>On(Sr())!==void 0&&!de(a.view);function bR(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function wR(){if(!a.run.file||a.view==="reading")return"";let t=On(Sr());if(t&&Ho(t))return`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(t)return`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let e=a.changed_beside;return a.is_old&&e.length?`${Wt(e)} ${e.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var In={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Qa=t=>(...e)=>({_$litDirective$:t,values:e}),Ci=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:yR}=oh,U_=t=>t;var K_=t=>t.strings===void 0,z_=()=>document.createComment(""),Wi=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let r=o.insertBefore(z_(),i),l=o.insertBefore(z_(),i);n=new yR(r,l,t,t.options)}else{let r=n._$AB.nextSibling,l=n._$AM,d=l!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||d){let c=n._$AA;for(;c!==r;){let p=U_(c).nextSibling;U_(o).insertBefore(c,i),c=p}}}return n},ho=(t,e,n=t)=>(t._$AI(e,n),t),vR={},Ga=(t,e=vR)=>t._$AH=e,J_=t=>t._$AH,Ya=t=>{t._$AR(),t._$AA.remove()};var P=Qa(class extends Ci{constructor(t){if(super(t),t.type!==In.PROPERTY&&t.type!==In.ATTRIBUTE&&t.type!==In.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!K_(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Ut||e===u)return e;let n=t.element,o=t.name;if(t.type===In.PROPERTY){if(e===n[o])return Ut}else if(t.type===In.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Ut}else if(t.type===In.ATTRIBUTE&&n.getAttribute(o)===e+"")return Ut;return Ga(t),e}});var te=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function En(t,e){let n=te(e).split(/\s+/).filter(Boolean),o=i=>n.every(r=>te(i).includes(r));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Za(t,e){let n=te(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(r=>r.id===i))return i}}var Ii=28.349523125,Y_=25.4,kR=29.5735295625;function Kt(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function S(t,e){return Z_(Kt(t,e))}var Z_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function ae(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${Kt(t,e)} %`:vc(t)?"just below 0 %":"0.0 %"}var vc=t=>t<0||Object.is(t,-0),X_=t=>Math.abs(t-Math.round(t))<1e-6;function V_(t){return t?[0,1,2,3].find(e=>X_(t*10**e))??3:0}function Q_(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function xR(t){return[0,1,2].find(e=>t.every(n=>X_(n*10**e)))??3}function Gr(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function at(t,e){let n=r=>t[`${e}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-xR([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var t$=.001;function Qr(t,e,n,o,i=1e-9){let r=10**n;return Kt(o==="nearest"?t/e:Math.floor((t+i)/e*r)/r,n)}var G_=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function TR(t){if(!G_.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return G_.find(e=>Math.abs(e*Ii-t)<.6*t$)}function X(t,e,n="nearest"){let o=e.scale_step_g||.1,i=TR(o),r=Math.min(.6*t$,o/2),l=i?Qr(e.g,1,Q_(o),n):Qr(e.g,1,V_(o),n,r),d=i?Qr(e.g,Ii,V_(i),n,r):Qr(e.g,Ii,Q_(o/Ii),n),[c,p]=[`${e.g_text??l} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Gr(t,c,p)}var H=(t,e,n=1,o="nearest")=>X(t,{g:e,scale_step_g:10**-n},o);function Pe(t,{g:e=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>Z_(Qr(e,l,3,"down")),i=16*Ii,r=e<1e3?`${o(1)} g`:`${o(1e3)} kg`;return x(Gr(t,r,e<i?`${o(Ii)} oz`:`${o(i)} lb`))}function vt(t,e,n=1){return Gr(t,`${Kt(e,n)} ml`,`${Kt(e/kR,2)} US fl oz`)}function _t(t,e){return Gr(t,`${S(e,1)} mm`,RR(e))}function RR(t){let e=Math.round(Math.abs(t)/Y_*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(e/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var kc=([t])=>t,x=([t,e])=>e?`${t} (${e})`:t;function e$(t,e){return Gr(t,`${Kt(e,0)} \xB0C`,`${Kt(e*1.8+32,0)} \xB0F`)}function Je(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??Y_;return n*o}function Oe(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Dt=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function N(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function kt(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${N(t)}`}var n$=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),xt=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,N);function Xa(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function go(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function r$(t){let e=Je(t.round?.radius);if(e)return o$(e,R`<circle class="plain" r=${e} />`);let n=SR(t);if(!n)return u;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?o$(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var o$=(t,e)=>s`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function SR({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return AR(t);if(!Array.isArray(e))return;let n=e.map(o=>[i$(o,"x"),-i$(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function i$(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Je(n.replace(/^-/,""))??NaN)}function AR({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Je(e),Je(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(r,l)=>{let d=Math.PI*l/t,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var xc=!1;function s$(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!xc&&PR(),{workings:DR(n?.workings,t),complaint:n?.complaint,is_old:o}}function DR(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function PR(){let{plan:t,planned:e}=a;if(!(!t||!e)){xc=!0;try{let{how:n}=await yf(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{xc=!1}}}var a$=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,Tc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${a$}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${a$}<path class="measure" d="M20 10h80" />`}};var Rc=t=>`term ${t}`;function Nn(t){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Rc(t))?"true":"false"}
    aria-label="What ${Tc[t].name} means"
    @click=${()=>Et("open",Rc(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Ve(t){if(!a.open.has(Rc(t)))return u;let{name:e,words:n,drawing:o}=Tc[t];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var _o=t=>s`<span class="term">${Nn(t)}${Ve(t)}</span>`;function W({key:t,label:e,shown:n,of:o,working:i,size:r="plain",note:l,term:d}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Et("open",t)}
    >
      <span class="name">${e}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?s`${Nn(d)}${Ve(d)}`:u}
    ${c?s`<div class="sum" id=${p}>${i?tl(i):Sc(o)}</div>`:u}
  </div>`}var Zo=(t,e,n)=>W({key:t,label:e,shown:["",""],of:n});function Sc(t){let{workings:e,complaint:n,is_old:o}=s$(t);return e.length?s`<div class=${o?"old":""}>${e.map(tl)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function tl({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>s`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Xo,Yr=[],jn=()=>Xo!==void 0;function _e(t,e,n,o){if(!Xo||Xo.some(r=>r.id===n))return;let i=Yr.flatMap(({part:r})=>r??[]);Xo.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:Yr.flatMap(({fold:r})=>r??[])})}function Fe(t,e){Yr.push(t);try{return e()}finally{Yr.pop()}}var l$=()=>{},u$=t=>{l$=t},el,OR=()=>[a.run.now,...Object.values(a.formulas).map(t=>t.now),...Object.values(a.beside).map(t=>t.now),a.formulas.apart,a.plan,a.fats,a.files];function Ei(){if(jn())return[];let t=OR();return el?.of.length===t.length&&t.every((n,o)=>n===el.of[o])||(el={of:t,wanted:FR()}),el.wanted}function FR(){Xo=[],Yr=[];try{return l$(),Xo}finally{Xo=void 0}}function d$(t){a.touched.has(t)||f({touched:new Set(a.touched).add(t)})}function c$(t,e){if(a.has_asked)return!1;let n=Ei().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var Y=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function nl(t){if(t==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let e=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??e(a.quoted,a.quoted?.of)??e(a.run_days,a.run_days?.of[0])}function Jt(t,e){let n=nl(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Me(t)&&!c$(t,n.field)?L(n):void 0}function Pt(t,e){return nl(t)?.field===e?Jt(t,e):void 0}function Me(t){let e=nl(t),n=io(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function MR(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function mn(){let t=nl();if(t)for(let e of["run",...ht,...St])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Jt(e,n)&&document.getElementById(Y(e,n));if(o)return o}}function LR(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=BR(t,n);return o&&Dt(e)?`${e.trim()} ${o}`:e}function BR(t,e){return Oe(g(e,t.at))||t.unit||""}var $t=(t,e,n)=>e||n?s`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,Ac=!1;addEventListener("pointerdown",()=>Ac=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>Ac=!1,!0);var CR=()=>f({typed:void 0});function ti(t){let{id:e}=t.target,n=()=>{CR(),d$(e)};Ac?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var WR=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,IR=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function h(t){let e=t.of??"run",n=Y(e,t.at),o=g(e,t.at),i=WR(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!t.optional||t.is_due===!0);d&&_e(e,t.at,n,t.label);let c=Jt(e,t.at),p=b=>{let y=b.target.value;f({typed:{key:n,text:y}});let T=LR(t,y);Z(e,T===void 0&&t.takes_part?MR(e,t.at):t.at,T)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||t.hint||i;return s`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${Dc(s`<label for=${n} data-said=${IR(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${P(l)}
      @input=${p}
      @blur=${ti}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${$t(n,c,_)} ${t.term?Ve(t.term):u}
  </div>`}var Dc=(t,e)=>e?s`<div class="labelled">${t}${Nn(e)}</div>`:t;function ee(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var B=t=>()=>document.getElementById(t),ot=(t,e)=>B(Y(t,e)),Qe=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),ER=()=>document.activeElement;function I(t){requestAnimationFrame(()=>ee(t()))}function $e(t,e,n,o=ER){D(e),kg(t,n),I(o)}function q(t,e,n,o,i){$e(t,e,r=>M(r,n,o),i)}var Le=(t,e,n)=>`${Y(t,e)}-${n}`;function C(t,e){let n=Pt(t,e);return n?s`<p id=${Y(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var p$=(t,e,n)=>e.map(([o,i])=>s`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ct(t,e,n,o){return s`<div class="choice" role="group" aria-label=${t}>${p$(e,n,o)}</div>`}function A({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?Le(t,n,e.replaceAll(/\W+/g,"-")):Y(t,o),y=r===void 0&&!m;y&&_e(t,o,b,e);let T=i?void 0:Pt(t,o),J=Ht=>{if(Ht===r)return;let Do=l.find(([$x])=>$x===Ht)[1];q(t,`${e}: ${Do}`,n,d(Ht),c&&ot(t,c(Ht)))};return s`<div class="field asked ${T?"wants":""}">
    ${Dc(s`<p class="question" id="${b}-label" data-said=${y?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${T||p?`${b}-said`:u}
    >
      ${p$(r,l,J)}
    </div>
    ${$t(b,T,p)} ${_?Ve(_):u}
  </div>`}function Pc(t,e,n,o){let i=Y("run",t),r=Pt("run",t),l=()=>q("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${e}
      </button>
    </div>
    ${$t(i,r)}`}function mt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:d}){let c=Y(e,n),p=Jt(e,n),m=l??O(e,n);!m&&!r&&_e(e,n,c,t);let _=!m||o.some(([T])=>T===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${r?u:"true"}
      @change=${T=>{let J=T.target.value;d?d(J):Z(e,n,J||!r?J:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([T])=>T||r||!m).map(([T,J])=>s`<option value=${T} .selected=${P(T===m)}>${J}</option>`)}</select
    >${$t(c,p)}
  </div>`}function Ni(t,e,n=[]){let o=re(O("run",e),n);return mt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ne({of:t="run",at:e,name:n,title:o,add:i,blank:r,body:l}){let d=Le(t,e,"part"),c=Le(t,e,"add"),p=()=>Fe({part:o},l);return g(t,e)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>q(t,`${o} added`,e,r,Qe(d))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>q(t,`${o} removed`,e,void 0,B(c))}
      >
        Remove
      </button>
    </div>
    ${C(t,e)} ${p()}
  </div>`}var m$=(t,e)=>`folded ${t} ${e}`,Vt=(t,e)=>dt(m$(t,e));function F({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:r}){let l=m$(t,e);if(jn())return s`${Fe({fold:l},r)}`;(i||n.some(p=>Jt(t,p)))&&dt(l);let d=a.open.has(l);return s`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Et("open",l)}}>${o}</summary>
    ${d?s`<div class="folded">${r()}</div>`:u}
  </details>`}var k=({of:t="run",at:e})=>et(t,e),E=({of:t="run",at:e},n)=>Le(t,`${e}/${n}`,"item"),ol=({of:t="run",at:e},n,o)=>Le(t,`${e}/${n}`,o),NR=({of:t="run",at:e})=>Y(t,e);function Zr(t,e,n,o){let{of:i="run",at:r,stays:l,and:d=c=>c}=t;$e(i,e,c=>d(M(c,r,n.length||l?n:void 0),n.length),o)}function U(t,e,n){let o=k(t);Zr(t,`${n} added`,[...o,e],Qe(E(t,o.length)))}function jR(t,e,n){let o=k(t).filter((l,d)=>d!==e),i=Math.min(e,o.length-1),r=o.length>(t.least??0);Zr(t,`${n} removed`,o,r?B(ol(t,i,"drop")):ot(t.of??"run",t.at))}function HR(t,e,n,o){let i=[...k(t)],[r]=i.splice(e,1);i.splice(e+n,0,r);let l=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;Zr(t,`${o} moved ${l}`,i,B(ol(t,e+n,c)))}function K(t,e,n){let o=k(t).length-1,i=o>=(t.least??0),r=t.in_order&&o>0;if(!i&&!r)return u;let l=(d,c,p)=>s`<button
      type="button"
      id=${ol(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>HR(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?s`<button
            type="button"
            id=${ol(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>jR(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function tt(t,e,n){let o=NR(t),i=Pt(t.of??"run",t.at);return s`${$t(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var lt=()=>a.beside.studio!==void 0,Xr=({run:t})=>g("run",t),Oc=({studio:t})=>g("studio",t);function ts(t){return Xr(t)===void 0&&lt()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var fn=t=>Xr(t)??Oc(t),Nt=(t,e)=>h({...e,...ts(t)}),Fc=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function es(t,e=""){return t===void 0||Fc(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>es(o,`${e}/${j(n)}`))}function Hn(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Fc($(t,n))&&(t=M(t,n,void 0));return t}var ji=(t,e)=>e.reduce((n,o)=>Hn(M(n,o,void 0),o),t);function h$(t){let e=new Map;return t.flatMap(n=>es(Xr(n)).flatMap(([o,i])=>{let r=n.studio+o,l=e.get(r)??g("studio",r);return Fc(l)||String(l).startsWith("?")||l===i?(e.set(r,i),[[n.run+o,r,i]]):[]}))}async function Mc(t){lt()||await ka();let e=h$(t);Ue([["studio",n=>e.reduce((o,[,i,r])=>M(o,i,r),n)],["run",n=>ji(n,e.map(([o])=>o))]]),D("Kept in the studio")}function qR(t){let e=t.flatMap(o=>es(Oc(o)).map(([i,r])=>[o.run+i,r]));Ue([["run",o=>e.reduce((i,[r,l])=>$(i,r)===void 0?M(i,r,l):i,o)]]),D("Said in this run only")}function UR(t){let e=t.flatMap(n=>es(Xr(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Ue([["run",n=>ji(n,e)]]),D("Taken from the studio again")}var f$=t=>es(t).length>0;function $o(t,e){if(!lt())return u;let n=e.some(r=>f$(Xr(r))),o=e.some(r=>f$(Oc(r))),i=(r,l)=>s`<button type="button" aria-label="${t}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&h$(e).length?i("Keep in my studio",()=>{Mc(e)}):u}
    ${n&&o?i("As in the studio",()=>UR(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>qR(e)):u}
  </span>`}function Lc(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return e.find(o=>re(o,n)===re(t,n))??t}var ft=(t,e)=>Object.keys(g(t,e)??{}),g$=(t,e)=>`${Y(t,e)}-name`;function Hi({of:t,at:e,label:n,add:o,blank:i,then:r}){let l=g$(t,e),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",ft(t,e).includes(p))return ee(r(p)());q(t,`${p} added`,`${e}/${j(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function ns({of:t,at:e,name:n,label:o,also:i=l=>l,put:r}){let l=`${Y(t,e)}-${ft(t,e).indexOf(n)}-called`;return Cc({id:l,name:n,label:o,taken:ft(t,e),take:d=>{let c=p=>i(os(p,e,n,d),d);r?r(c,d):$e(t,`${n} is called ${d}`,c)}})}var Bc;function Cc({id:t,name:e,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);Bc=m?{id:t,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===e)&&(i(p),D(`${e} is called ${p}`),I(B(t)))},d=Bc?.id===t?Bc.words:void 0;return s`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${P(a.typed?.key===t?a.typed.text:e)}
      @input=${c=>f({typed:{key:t,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||r?`${t}-said`:u}
    />
    ${$t(t,d,r)}
  </div>`}function os(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([r,l])=>[r===n?o:r,l]);return M(t,e,Object.fromEntries(i))}function ei(t,e,n,o=n){let i=r=>Hn(M(r,`${e}/${j(n)}`,void 0),e);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>$e(t,`${o} removed`,i,B(g$(t,e)))}
    >
      ×
    </button>
  </div>`}var ni="/pipe/beads",Ye=`${ni}/tip`,zR={of:"run",at:Ye},hn={at:`${ni}/moves`,in_order:!0},Wc="\0own",w$={tip:"",bead_to_opening:"",moves:[]},Ge=(t,e)=>({name:t,label:e,kind:"length"}),_$={name:"count",label:"How many",kind:"count"},$$=Ge("circle_radius","Radius of their circle"),Ic={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Ge("diameter","Diameter"),Ge("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Ge("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Ge("start_radius","Radius at the start"),Ge("end_radius","Radius at the end"),Ge("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Ge("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[_$,$$,Ge("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[_$,$$,Ge("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Ge("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function y$(t){return s`${JR()} ${Ec()?rl(zR):ZR()}
    ${h({label:"Bead \xF7 tip opening",at:`${ni}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(hn).map((e,n)=>r0(e,n,t))}</div>
    ${l0()}`}var Ec=()=>typeof g("run",Ye)=="object",Nc=()=>String(g("run",`${ni}/own_tips`)??g("studio","/own_tips")??"");function KR(){let t=Nc(),e=t?cc(t):[];return g("run",`${ni}/own_tips`)===void 0?[...e,...Ur()]:e}function JR(){let t=n=>n===Wc?q("run","a tip of your own",Ye,{name:"",round:{radius:""}},QR):Z("run",Ye,n),e=KR().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${mt({label:"Tip",at:Ye,answers:[...e,[Wc,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Ec()?Wc:void 0})}
  ${Ec()?u:F({name:"tips",pointers:[`${ni}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${ni}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var VR=Le("run",Ye,"own"),QR=Qe(VR);async function GR(){let t=g("run",Ye);if(!await Bd())return;let e=et("own_tips","/tips"),n=YR(String(t.name).trim()||"My tip",e);Ue([["own_tips",o=>M(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>M(o,Ye,n)]]),D(`${n} kept in ${a.beside.own_tips.file}`)}function YR(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Ur()].some(i=>i.name===o))return o}}function ZR(){let t=O("run",Ye),e=Nc();if(!t||!e||!cc(e).some(o=>o.name===t))return u;let n=et("own_tips","/tips").findIndex(o=>o.name===t);return n<0?s`<button type="button" @click=${()=>{Bd()}}>Change this tip of my own</button>`:rl({of:"own_tips",at:`/tips/${n}`})}var b$=[["round","Round"],["star","Star"],["outline","Another outline"]],il={x:"",y:""},XR={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[il,il,il]};function rl({of:t,at:e}){let n=b$.map(([r])=>r),o=n.find(r=>g(t,`${e}/${r}`)!==void 0),i=r=>({...gt(t,e,n),[r]:XR[r]});return s`<div class="part" id=${Le(t,e,"own")} role="group" aria-label="My own tip">
    ${C(t,e)} ${t0({of:t,at:e})}
    ${A({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:b$,puts:i})}
    ${o?o0({of:t,at:e},o):u}
    ${F({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>n0({of:t,at:e})})}
    ${t==="run"?s`<button type="button" @click=${()=>{GR()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var t0=({of:t,at:e})=>t==="run"?h({label:"What you call the tip",at:`${e}/name`}):Cc({id:Y(t,`${e}/name`),name:O(t,`${e}/name`),label:"What you call the tip",taken:et("own_tips","/tips").map(({name:n})=>String(n)),take:n=>e0(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function e0(t,e){let n=O("own_tips",`${t}/name`),o="/hand",i=qe(Nc())===a.beside.own_tips?.file,r=i&&g("run",Ye)===n,l=i&&g("studio",`${o}/${j(n)}`)!==void 0;Ue([["own_tips",d=>M(d,`${t}/name`,e)],...r?[["run",d=>M(d,Ye,e)]]:[],...l?[["studio",d=>os(d,o,n,e)]]:[]])}function n0({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return s`<div class="row">
      ${h({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>q(t,"correction removed",n,void 0,Qe(Le(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function o0(t,e){if(e==="outline")return i0(t);let{of:n,at:o}=t,i=(r,l)=>h({of:n,label:l,at:`${o}/${e}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function i0({of:t,at:e}){let n={of:t,at:`${e}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${E(n,i)}>
          ${h({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${K(n,i,`corner ${i+1}`)}
        </div>`)}
    ${tt(n,"One more corner",()=>U(n,il,"corner"))}`}function r0(t,e,n){let o=Ic[String(t.move)],i=`${hn.at}/${e}`,r=`${e+1}. ${o?.words??String(t.move)}`;return s`<div class="part" id=${E(hn,e)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${K(hn,e,r)}
    </div>
    ${C("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>s0(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${a0(e,n)}
  </div>`}function s0(t,{name:e,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${t}/${e}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function a0(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==k(hn).length)return u;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return W({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:vt(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function l0(){let t=o=>({move:o,...Object.fromEntries(Ic[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=Y("run",hn.at),n=Pt("run",hn.at);return k(hn).length||_e("run",hn.at,e,"What the tip does"),s`${$t(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Ic).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>U(hn,t(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function gn(t,e=()=>{}){if(!t.theirs)return u;let n=Ho(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Nh(t),e()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?s`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>jh(t)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>Eh(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function _n(t){if(t.theirs||!t.set_aside||xi(t)&&!t.is_taken)return u;let e=()=>{xi(t)&&Ko(),Hh(t)};return s`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?s`<button type="button" @click=${()=>Wh(t)}>Close</button>`:u}
    </div>
  </section>`}var sl={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function k$(t,e){let n=Hr(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=et("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{u0(t,e)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return F({of:"own_fats",name:e,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Fe({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>jc(l))})}async function u0(t,e){await xa(t),Vt("own_fats",e);let n=et("own_fats","/fats").findIndex(o=>o.id===e);I(B(`f-own_fats-fats-${n}-name`))}var d0=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function jc(t){let e=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:r});return s`${C("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${A({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:O("own_fats",`${t}/kind`)||void 0,answers:d0,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${c0(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${F({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>p0(t)})}`}function c0(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${A({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):s`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function p0(t){let e=(o,i,r,l)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>q("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${C("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${t}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${m0(`${t}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var v$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function m0(t){let e=Object.keys(g("own_fats",t)??{}),n=v$.filter(([l])=>!e.includes(l)),o=l=>v$.find(([d])=>d===l)?.[1]??l,i=l=>`${t}/${j(l)}`,r=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${d?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>q("own_fats",`${o(l)} removed`,e.length>1?i(l):t,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${C("own_fats",t)} ${e.map(r)}
    <div class="row">
      ${mt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&q("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function qi(t){let{pieces:e,batches:n,batch_limits:o,around:i,...r}=t,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:t}}var V=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,f0=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Ze(t,{pieces:e,casts:n}){let o=t.cut?V(e,"bar"):V(e,"piece");return n===e?o:`${o} from ${V(n,...f0(t))}`}var h0=t=>t===1?"once":`${t} times`,Hc=t=>t.batches.length>1,Qt=t=>t.pieces.batches>1;function bt(t){return Qt(t.whole)?`one batch, ${Ze(t.whole,t.batch)}`:""}var x$=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function qc(t,e){return x$(t)?`${Ze(t.whole,e)}${e.count>1?`, whipped ${h0(e.count)}`:""}`:""}function al(t,e){let n=qc(t,e);return n&&`one whipping: ${n}`}var T$=t=>Qt(t.whole)||x$(t),ll=(t,e)=>`${V(t,"filling")} of ${V(e,"cavity","cavities")}`;var R$=t=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(e=>e.file===t)?.name||t;function ul(t){let e=t?.used_by??[];return e.length?s`<p class="aside">Used by ${Wt(e.map(R$))}.</p>`:u}function Ui(t){let e=t?.used_by??[];return e.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Wt(e.map(R$))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var is={of:"own_fats",at:"/fats",least:1},dl={of:"own_tips",at:"/tips",least:1},oi=({of:t,at:e})=>et(t,e);function S$(t){return D$(t,is,"fats",e=>{let n=`/fats/${e}`;return F({of:"own_fats",name:String(oi(is)[e].id),pointers:[n],summary:s`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${g0(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>jc(n)})})}function g0(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function A$(t){return D$(t,dl,"tips",e=>{let n=`/tips/${e}`;return s`<div class="tip-row">
      ${r$(oi(dl)[e])}
      ${F({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>rl({of:"own_tips",at:n})})}
    </div>`})}function D$(t,e,n,o){let i=a.files?.[n].find(({file:l})=>l===t.file),r=l=>String(oi(e)[l].name||`number ${l+1}`);return s`${gn(t)} ${_n(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${Ui(i)}
      ${t.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${oi(e).map((l,d)=>s`<div class="held" id=${E(e,d)} role="group" aria-label=${r(d)}>
              ${o(d)} ${K(e,d,r(d))}
            </div>`)}
      </div>
    </section>`}var Uc=(t,e)=>({...sl,id:Za(t,e),name:t});function P$(t){let e=Uc(t,[...a.fats,...oi(is)]);U(is,e,t),Vt("own_fats",String(e.id)),I(ot("own_fats",`/fats/${oi(is).length-1}/source`))}var zc=t=>({name:t});function O$(t){U(dl,zc(t),t);let e=oi(dl).length-1;Vt("own_tips",`tip ${e}`),I(Qe(Le("own_tips",`/tips/${e}`,"own")))}var F$=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},cl=Qa(class extends Ci{constructor(t){if(super(t),t.type!==In.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],r=[],l=0;for(let d of t)i[l]=o?o(d,l):l,r[l]=n(d,l),l++;return{values:r,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=J_(t),{values:r,keys:l}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=l,r;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,y=0,T=r.length-1;for(;_<=b&&y<=T;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[y])c[y]=ho(i[_],r[y]),_++,y++;else if(d[b]===l[T])c[T]=ho(i[b],r[T]),b--,T--;else if(d[_]===l[T])c[T]=ho(i[_],r[T]),Wi(t,c[T+1],i[_]),_++,T--;else if(d[b]===l[y])c[y]=ho(i[b],r[y]),Wi(t,i[_],i[b]),b--,y++;else if(p===void 0&&(p=F$(l,y,T),m=F$(d,_,b)),p.has(d[_]))if(p.has(d[b])){let J=m.get(l[y]),Ht=J!==void 0?i[J]:null;if(Ht===null){let Do=Wi(t,i[_]);ho(Do,r[y]),c[y]=Do}else c[y]=ho(Ht,r[y]),Wi(t,i[_],Ht),i[J]=null;y++}else Ya(i[b]),b--;else Ya(i[_]),_++;for(;y<=T;){let J=Wi(t,c[T+1]);ho(J,r[y]),c[y++]=J}for(;_<=b;){let J=i[_++];J!==null&&Ya(J)}return this.ut=l,Ga(t,c),Ut}});async function pt(t){f({list_complaint:""});try{await t()}catch(e){f({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof w&&await De().catch(()=>{})}}var Kc=()=>{pt(Ag)},M$=()=>{pt(Dg)};function Be(t){return s`<h1 tabindex="-1">${t}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Cr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Kc}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(e=>s`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var L$=new Map,B$=Promise.resolve();function C$(t,e=""){let n=`${t}
${e}`,o=L$.get(n);return o||(o=B$.then(()=>_0(t)),B$=o,L$.set(n,o)),o}async function _0(t){try{let e=await rn({kind:"glb",gauge:{file:t}}),n=Ai(await e.arrayBuffer());return Ir(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof w)return;throw e}}var Jc=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{C$(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void Te(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=e,d=.04*Math.max(o-n,r-i),c=[n-d,-r-d,o-n+2*d,r-i+2*d];Te(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Wr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Jc);var Xe=(t,e)=>s`<ul class="cards">
    ${cl(t,({file:n})=>n,e)}
  </ul>`;function $n(t){let{one:e,facts:n,picture:o,open:i}=t,r=a.list_open?.file===e.file?a.list_open:void 0,l=e.name||e.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{pt(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>$0(t,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?b0(t,r):u}
  </li>`}function $0({one:t},e){let{file:n,name:o,note:i}=t;f({list_open:e?{file:n,name:o,note:i,stem:Vo(n)}:void 0})}function b0(t,e){let{kind:n,one:o}=t,i=s`<button type="button" @click=${()=>{pt(()=>y0(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===e[c])&&Vo(o.file)===e.stem,l=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{pt(()=>v0(t,e))};return s`<div class="acts">
    ${ul(o)} ${n.called?Vc(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Vc("Note",e,"note")} ${Vc("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{pt(()=>I$(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?w0(o,e):u}
  </div>`}function Vc(t,e,n){let o=`list-${n}`,i=r=>v(e,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${P(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function w0(t,e){return s`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{pt(()=>I$(t,e,!0))}}>Remove it even so</button>
  </div>`}async function y0(t,e){let n=await Pg(t,e),o=a.files?.[t.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Vo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function v0({kind:t,one:e},n){let{name:o,note:i,stem:r}=n;await Fg(t,e,{name:o.trim(),note:i.trim(),stem:r.trim()}),W$(n)}function W$(t){a.list_open===t&&f({list_open:void 0})}async function I$(t,e,n){let o=t.used_by??[];if(o.length&&!n)return v(e,{used_by:o});try{await Mg(t,n),W$(e)}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;v(e,{used_by:r})}}function pl(t,e,n){let o=[...a.files?.[t.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?Xe(o,r=>$n({kind:t,one:r,facts:k0(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${e}</p>`}var E$=4;function k0({holds:t=[],changed:e}){let n=t.length-E$,o=n>0?[...t.slice(0,E$),`${n} more`]:t;return[o.length?Wt(o):"",e?`changed ${N(e)}`:""].filter(Boolean)}var rs="";function ml({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(rs.trim()),rs="",Q()})},r=l=>{rs=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${P(rs)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!rs.trim()} @click=${i}>${e}</button>
  </div>`}function Ce(t){let e=a.removed.filter(n=>n.kind===t);return e.length?s`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(x0)}
    </ul>
  </details>`:u}function x0(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${N(t.removed_at)}, kept until ${N(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{pt(()=>Lg(t))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{pt(()=>Bg(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Et("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${e} ..." @click=${()=>Et("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function j$(){let t=so();return s`${Be("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${pl(sn,"Each file is named by the formulas that use its fats.",e=>Br(sn,e))}
      ${t?S$(t):u}
      ${ml({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(P$(e)):Ta(sn,Uc(e,a.fats)),tried:pt})}
    </section>
    ${T0()} ${Ce("fats")}`}var N$="fats that are listed";function T0(){let t=a.finding?.key===N$?a.finding.text:"",e=a.fats.filter(n=>En(n,t)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${P(t)}
          @input=${n=>f({finding:{key:N$,text:n.target.value}})}
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
          ${e.map(n=>R0(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:s`<p class="hint">None is called so.</p>`}
  </section>`}function R0(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,r=En(t,e),l=d=>S(d,1);return s`<tr>
    <th scope="row">${t.name}${r&&r!==t.name?s` <small>${r}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var H$=t=>t.goes_into==="lye",q$=({role:t})=>t==="alkali",S0=t=>q$(t)?"down":"nearest",ii=(t,e)=>X(t,e,S0(e));function fl(t){let e=t.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>H$(i)),n=({one:i})=>i.role==="water",o=({one:i})=>q$(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function U$(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!H$(e))}function Qc(t){let e=O(t,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${O0(t)}
    ${F({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var A0=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],z$={after:"",mass:""},K$=3,D0={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:K$},()=>z$)}}};function P0(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function O0(t){let e=P0(t);return s`${A({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:A0,puts:o=>({...gt(t,"",["drying","water_lost_in_cure"]),...D0[o]})})}
  ${e==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?F0(t):u}`}function F0(t){let e={of:t,at:"/drying/weighings",least:K$};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(e).map((n,o)=>s`<div class="row named" id=${E(e,o)}>
          ${h({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${K(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${tt(e,"One more weighing",()=>U(e,z$,"weighing"))}`}var M0=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],hl=t=>mo(t).map(e=>[e.id,e.name]),J$=["unsaid","Not given"],V$=["none","Holds none"],Q$=t=>t===void 0?"unsaid":t==="none"?"none":"some",L0=t=>e=>e==="some"?t:e==="none"?"none":void 0;function G$(t,e){return Gc(t,`${e}/contains_fat`,[J$,V$,["some","Holds fat"]],hl(t))}function Gc(t,e,n,o){let i=Q$(g(t,e)),r=n.some(([l])=>l===i)?i:void 0;return s`${A({of:t,question:"Fat in it",at:e,chosen:r,answers:n,puts:L0({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${mt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var B0=[J$,V$,["some","Holds acid"],["typed","By what it takes up"]],C0={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Yc(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Q$(g(t,n));return s`${A({of:t,question:"Acid in it",at:n,chosen:o,answers:B0,puts:i=>C0[i]})}
  ${o==="some"?s`<div class="row">
          ${mt({label:"Which acid",of:t,at:`${n}/acid`,answers:M0.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Zc(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Zc(t,e,n){let o=g(t,e)===!0?"yes":"no";return A({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var W0=["tsp/lb","tbsp/lb","tsp/kg"],gl=["%","g/kg",...W0].flatMap(t=>[`${t} of fats`,`${t} of batter`]),Z$=[...gl,"% of finished soap","g/kg of finished soap"];function Y$(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function _l(t,e,n,o,i=!1){let r=Y(t,e),[l,d]=Y$(O(t,e),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&d)&&_e(t,e,r,l.trim()?`${n}: of what`:n);let m=Jt(t,e),_=(y,T)=>{let J=`${y.trim()} ${T}`.trim();Z(t,e,i&&!y.trim()?void 0:J),Q()},b=y=>{let T=y.target.value,[J,Ht]=Y$(T,o);f({typed:{key:r,text:T}}),_(J,Ht||d)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${P(c)}
        @input=${b}
        @blur=${ti}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>_(c,y.target.value)}
      >
        <option value="" .selected=${P(d==="")}>of what?</option>
        ${o.map(y=>s`<option value=${y} .selected=${P(y===d)}>${y}</option>`)}
      </select>
    </div>
    ${$t(r,m)}
  </div>`}function I0(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var E0=.01+1e-9;function zi(t,e){let{sum:n,unread:o}=I0(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=E0?`${t} add to ${i(n)}.`:r>0?`${t} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-r)} too much.`}var tb=(t,e)=>mo(t).find(n=>n.id===e)?.name??e,ss=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),as=t=>k(ss(t));function tp(t){let e=as(t),n=a.picking?.of===t&&a.picking.row===e.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>N0(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?zi("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:_e(t,"/fats",Y(t,"/fats"),"The fats")}
    ${n?ob(t):tt(ss(t),"Add a fat",()=>eb(t,e.length))} ${V0(t)}
  </section>`}function N0(t,e,n){let o=`/fats/${e}`,i=tb(t,String(n[e].fat??""))||"Which fat?",r=Pt(t,`${o}/fat`)??Pt(t,o),l=a.picking?.of===t&&a.picking.row===e;return s`<li class="formula-row" id=${E(ss(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Y(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Xc():eb(t,e)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${K(ss(t),e,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?ob(t):u}
    ${k$(t,String(n[e].fat??""))}
    ${F({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${q0(n[e])}`,body:()=>K0(t,e)})}
  </li>`}function eb(t,e){f({picking:{of:t,row:e,text:""}}),I(B("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Xc(){let t=a.picking;f({picking:void 0}),t&&I(ot(t.of,t.row<as(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function ep(t,e){let{row:n}=a.picking,o=as(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Zr(ss(t),`${tb(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ot(t,`/fats/${n}/share`))}function nb(t){let{row:e,text:n,lit:o}=a.picking,i=as(t).map(d=>d.fat),r=j0(t,n),l=r.filter(d=>!i.includes(d.id)||i[e]===d.id);return{found:r,free:l,lit:l.find(d=>d.id===o)}}function X$(t){let e=a.picking;if(!a.fats.length)return f({picking:{...e,is_entered:!0}});let{free:n,lit:o}=nb(t),i=n.find(l=>te(l.name)===te(e.text.trim())),r=o??(n.length===1?n[0]:i);r?ep(t,r.id):e.is_entered&&f({picking:{...e,is_entered:!1}})}function ob(t){let{row:e,text:n}=a.picking,o=as(t).map(m=>m.fat),{found:i,free:r,lit:l}=nb(t),d=m=>{f({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:t,row:e,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Xc(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1)),m.key==="Enter"&&X$(t)};return a.picking.is_entered&&a.fats.length&&queueMicrotask(()=>a.picking?.is_entered&&X$(t)),s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Xc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":`The list of fats is on its way ...${a.picking.is_entered?" Then what you typed is taken.":""}`}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,b=En(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[e]===m.id?"true":"false"}
          @click=${()=>ep(t,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{H0(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function j0(t,e){let n=mo(t).filter(l=>En(l,e)!==void 0),o=e.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>En(l,d)!==void 0).length,r=Math.max(...mo(t).map(i));return r?mo(t).filter(l=>i(l)===r):[]}async function H0(t,e){if(!await xa(t))return;let o=e.trim(),i=Za(o,[...a.fats,...et("own_fats","/fats")]),r=et("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{...sl,id:i,name:o}),ep(t,i),Vt("own_fats",i),I(ot("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function q0(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var U0=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],z0={published:void 0,one:"",range:{low:"",typical:"",high:""}};function K0(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(t,`/fats/${e}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:t,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${A({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:U0,puts:d=>z0[d],hint:J0(t,O(t,`/fats/${e}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?Zc(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function J0(t,e){let n=mo(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function V0(t){let e=Hr(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=O(t,"/own_fats");return F({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var Q0=t=>ht.includes(t);function $l(){let t=a.complaint;return!t?.field||t.lye_heavy?!1:Ei().some(({of:e,at:n})=>Me(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function ls(){let t=a.complaint?Ei():[];return t.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>s`<li>
            <button type="button" @click=${()=>G0(e)}>
              ${e.part?s`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function G0({of:t,id:e,folds:n}){for(let o of n)dt(o);f({has_asked:!0}),Q0(t)?(a.view!=="formula"||a.formula_of!==t)&&se(t):a.view!=="set-up"&&!(t==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>I(B(e)))}var ib="danger-of-superfat";function np(t,e){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:fo(t).length?ib:void 0})}
    </div>
    ${Vr(t,ib)} ${Y0(t)} ${oS(t,e)}
  </section>`}function Y0(t){let e=et(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return s`${A({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Z0(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,r)=>X0(t,i,r,e.length>1))}
  ${e.length>1?s`<p class="total" role="status">
          ${zi("The two",e.map(i=>i.share))}
        </p>`:u}`}function Z0(t,e){let n=(o,i)=>({purity:"",...t.find(r=>r.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function X0(t,e,n,o){let i=`/alkali/${n}`,r=String(e.alkali??""),l=Pt(t,i)??Pt(t,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${r}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${F({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${tS(e.purity_range)}`,body:()=>eS(t,i)})}
  </div>`}var tS=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function eS(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return s`${A({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var nS={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function oS(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(nS);return s`${A({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:rS(e)})}
    <div class="row">${n.map(r=>iS(t,r))}</div>`}function iS(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function rS(t){if(!(!t||a.is_old))return`It now makes a strength of ${S(t.lye_strength_percent,1)} %; ${S(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(t.water_percent_of_fats,1)} % of the fats.`}function bo(t,e,n){let o=sS(t,e);return F({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${lS(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${rb(t,`${e}/allergens`,"Allergen","Add an allergen",(i,r)=>uS(t,i,r))}
        ${h({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function sS(t,e){let n=et(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var op={name:"",share:""},aS={unsaid:void 0,one:"",many:[op]};function lS(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...op,name:o}]:aS[l];return s`${A({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${rb(t,e,"INCI name","One more INCI name")}`:u}`}function uS(t,e,n){return A({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function rb(t,e,n,o,i){let r={of:t,at:e};return s`${k(r).map((l,d)=>s`<div class="row named" id=${E(r,d)}>
        ${h({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${K(r,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${tt(r,o,()=>U(r,op,n))}`}var dS=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:yS},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:hS},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:gS},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:_S}];function ip(t){return dS.map(e=>{let n={of:t,at:`/${e.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${E(n,l)}>
        ${pS(t,e,n,r,l)} ${e.row(t,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${e.aside}</p>`}
      ${tt(n,e.add,()=>U(n,cS(e),e.add.replace("Add ","")))}
    </section>`})}function cS(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function pS(t,e,n,o,i){let r=`/${e.list}/${i}`,l=Pt(t,r),d=String(o.name||`number ${i+1} of the ${e.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:t,at:`${r}/name`})}
      ${e.list==="liquids"?u:_l(t,`${r}/rate`,"How much",gl)}
      ${K(n,i,d)}
    </div>`}function sb(t,e,n,o){let i=`${e}/goes_into`,r=g(t,i);return A({of:t,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function ab(t,e,n){let o=g(t,`${e}/stirred_in`);return s`${sb(t,e,fS,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?A({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:mS,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var mS=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],fS=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function rp(t,e,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return F({of:t,name:`${e} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${_l(t,`${e}/limit`,"The most that the supplier's document allows",Z$,!0)}`})}function sp(t,e,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return F({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${G$(t,e)} ${o?Yc(t,e):u}`})}var bl=(t,e,n)=>bo(t,e,String(n.name||"it"));function hS(t,e,n){return s`${ab(t,e,!0)}
    <div class="folds">${sp(t,e,n,!0)} ${rp(t,e,n)} ${bl(t,e,n)}</div>`}function lb(t,e,n){return F({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>ab(t,e,!1)})}function gS(t,e,n){return s`<div class="folds">
    ${rp(t,e,n)} ${bl(t,e,n)} ${lb(t,e,n)} ${sp(t,e,n,!1)}
  </div>`}function _S(t,e,n){return s`${bS(t,e)}
    <div class="folds">
      ${rp(t,e,n)} ${bl(t,e,n)} ${lb(t,e,n)} ${sp(t,e,n,!0)}
    </div>`}var $S=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function bS(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return s`${A({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${mt({label:"Which oil",of:t,at:`${n}/fat`,answers:hl(t),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${A({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:$S,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var wS=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function yS(t,e,n){let o=(i,r,l)=>F({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:r,body:l});return s`${kS(t,e,n)}
    ${sb(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${TS(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>vS(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Yc(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${bl(t,e,n)}
    </div>`}function vS(t,e){let n=g(t,e)===!0?"ice":"liquid";return A({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function kS(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...gt(t,e,["replaces","rate"]),[r]:""});return s`${A({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:xS,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?_l(t,`${e}/rate`,"Rate",gl):u}`}var xS=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function TS(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(d,c)=>h({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return s`${A({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Gc(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...hl(t)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${mt({label:"Built-in figures of",of:t,at:n,answers:wS.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var us=()=>Object.keys(g("studio","/cups")??{}),ds=()=>us().length===1?{net:""}:us().length?{cup:"",net:""}:{holds:"",net:""},ub="\0another";function cs(t,e="Cup holds"){let n=`${t}/holds`,o=us();if(g("run",n)!==void 0||!o.length)return s`${h({label:e,at:n,unit:"ml",short:!0})}${o.length?RS(t):u}`;let i=l=>l===ub?q("run","Another cup",t,{...ap(t),holds:""},ot("run",n)):q("run",`Cup: ${l}`,t,{...ap(t),cup:l}),r=l=>O("studio",`/cups/${j(l)}`);return mt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[ub,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function ap(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var RS=t=>s`<button type="button" @click=${()=>q("run","A cup of the studio",t,ap(t))}>
    A cup of my studio
  </button>`;function cb(){return lt()?s`<div class="row">
    ${us().map(t=>h({of:"studio",label:`${t} holds`,at:`/cups/${j(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${SS()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function SS(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||db();e.value="",q("studio",`${n} added`,`/cups/${j(n)}`,"",ot("studio",`/cups/${j(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${db()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function db(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!us().includes(e))return e}}var AS=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),lp=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function wl(t){let{run:e}=lp(t);return F({name:e,pointers:[e],summary:"How warm",body:()=>s` <p class="hint">
          ${lt()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${$o("How warm",[lp(t)])} ${C("run",e)} ${DS(t)}`})}function DS(t){let{run:e,studio:n}=lp(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(d,c,p=i)=>Nt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${mt({label:"The lye cools in",...ts(l),answers:AS,unsaid:"not given",optional:!0})}
  </div>`}var be=()=>$(a.run.now,"/pipe")!==void 0;function pb(){let t=e=>{let n=M(e,"/pipe",{formula:"",fills_headspace:"",whip:ds()});return lt()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};dt("set-up pipe"),$e("run","Topping added",t,B("lane-pipe"))}function PS(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:M(o,i,void 0),t)}function OS(){$e("run","Topping removed",PS,B("topping-back"))}function mb(){let t=a.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||be()?u:s`<button type="button" id="topping-back" @click=${Lr}>Bring the topping back</button>`}function up(){return s`${IS()} ${wl("pipe")}
    <p class="choice"><button type="button" @click=${OS}>Take the topping away</button></p>`}var FS=["trials","beads","envelope"];function dp(t){return FS.every(e=>g("run",`/pipe/${e}`)===void 0)&&_e("run","/pipe",`${Y("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${C("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ne({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:ds()},body:MS})}
      ${ne({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:LS})}
    </div>
    ${ne({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:w$,body:()=>y$(t)})}
    ${t?CS(t):u}`}function MS(){let t={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(t).map((e,n)=>s`<div class="row" id=${E(t,n)}>
            ${h({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${K(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${tt(t,"One more trial",()=>U(t,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${cs("/pipe/trials/weigh_cup")}
    </div>
    ${C("run","/pipe/trials/weigh_cup")}`}function LS(){let t="/pipe/envelope",e=g("run",`${t}/form`);return s`${A({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var BS={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function CS(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>W({key:`pipe.by.${i}`,label:BS[i],note:o(l),shown:vt(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${WS(t)}`}function WS(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=S(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==e.correction,l=()=>q("run","correction kept",o,{correction:e.correction,trials:e.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function cp(t){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${cs("/pipe/whip")}
    </div>
    ${C("run","/pipe/whip")}
    ${t?.loads?s`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function IS(){let t="/pipe/pace",e=(n,o,i,r=!1)=>h({label:n,at:`${t}/${o}`,unit:i,optional:r,short:!0});return F({name:"pace",pointers:[t],summary:"Piping speed",body:()=>ne({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function ES(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function ps(t,e,n){return e?s`<button type="button" @click=${()=>n(e.at,ES(t,e))}>It is really so: keep it</button>`:u}var pp=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]),yl;function fb(t){uo();let{plan:e,run:n,record:o,is_old:i}=a,r=[t,n.file,e,o.version];return gb(r,!i&&e!==void 0,{mould:t,batches_of:n.file,below_brim_mm:e?.pour.below_brim_mm})}var hb=(t,e)=>gb([t,e],e!==void 0,{mould:t,batches_of:"studio.json"});function gb(t,e,n){return pp(a.ways.of,t)?a.ways:(e&&!pp(yl,t)&&NS(t,n),{})}async function NS(t,{mould:e,batches_of:n,below_brim_mm:o}){yl=t;let i=o===void 0?{}:{"below-brim":`${o} mm`},r=await jS({file:e,"batches-of":n,...i});pp(yl,t)&&f({ways:{of:t,...r}}),yl=void 0}async function jS(t){try{return{ways:(await on(t)).ways}}catch(e){if(!(e instanceof w))throw e;return{failed:L(e.complaint)}}}var fp=500,HS=()=>$(a.run.now,"/cut")===void 0&&qS()>=fp,qS=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,vl={run:"/cut/kerf",studio:"/kerf"};function _b(t){dt("set-up cut"),q("run","Cut","/cut",{bar:mp[t],...lt()?{}:{kerf:""}},ot("run",`/cut/bar/${Object.keys(mp[t])[0]}`))}function US(){q("run","Left whole","/cut",void 0,B("cut-into-bars"))}function $b(){return HS()?s`<button type="button" id="cut-into-bars" @click=${()=>_b("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>_b("slab")}>Cut it into bars</button>`:u}var mp={loaf:{thickness:""},slab:{length:"",width:""}};function zS(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var KS={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function bb(){let t=zS(),e=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return s` ${A({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>mp[o]})}
    <div class="row">
      ${t==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Nt(vl,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${$o("Kerf",[vl])}</p>
    ${t?A({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:KS[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${US}>Leave it whole</button>`}var kl=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function xl(t,e,n){return s`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${P(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var Tl=t=>x(vt(a.units,t)),JS=t=>t.charAt(0).toUpperCase()+t.slice(1);function Rl({ways:t,failed:e}){return e!==void 0?s`<p class="hint">How the ways of measuring compare is not known: ${e}.</p>`:t?.ways.length?s`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${t.used_because}</p>
    <ul class="each-way">
      ${t.ways.map(n=>VS(n,t))}
    </ul>
    ${GS(t)} ${t.remarks.map(n=>s`<p class="aside">${n}</p>`)}
  </section>`:u}function VS(t,{below_brim_mm:e}){let{by:n,brimful_ml:o,at_line_ml:i,low_ml:r,high_ml:l,rests_on:d,used:c}=t;return s`<li data-by=${n} class=${c?"is-used":""}>
    <p class="way-name">
      <b>By ${n}</b> ${c?s`<span>✓ the plan uses it</span>`:s`<span>${QS(t)}</span>`}
    </p>
    ${i===null?u:s`<p>to the pour line <b class="at-line">${Tl(i)}</b></p>`}
    <p>to the brim <b class="brimful">${Tl(o)}</b></p>
    <p>
      ${r===null||l===null?u:s`between ${Tl(r)} and ${Tl(l)}${e===null?"":" to the line"}: `}${r===null?JS(d):d}
    </p>
  </li>`}function QS({differs_percent:t}){let e=Kt(Math.abs(t),1);return e==="0.0"?"the same":`${e} % ${t>0?"more":"less"}`}var GS=({below_brim_mm:t,line_of:e})=>t===null?u:s`<p class="aside">
        The pour line is ${x(_t(a.units,t))} below the
        brim${e==="as asked"?"":`, ${e}`}.
      </p>`;function YS({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,d=l-r-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Wr(e,l))}${p("side",Wr(t.loops))}
    </svg>
  </div>`}function Ki(t,e=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,r=i.pockets[0];return s`${YS(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${x(vt(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${x(vt(a.units,i.total_ml))} together`:u},
      ${x(_t(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${x(vt(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var ZS={mm:"in",g:"oz","\xB0C":"\xB0F"},XS={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Sl(t,e,n=""){let o=hp(t);if(o)return o.unit??"";let i=Oe($(z(),t));return XS[e]?.test(i)?i:n||(a.units==="us"?ZS[e]??e:e)}var Al=()=>f({typed:void 0}),Ji=t=>`d${t.replaceAll("/","-")}`,hp=t=>a.typed?.key===Ji(t)?a.typed:void 0,Dl=t=>hp(t)?.text??String($(z(),t)??"");function wo(t){let{complaint:e}=it();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function gp(t,e,n,o){let{pointer:i}=t,r=l=>{let d=l.target.value,c=t.unit?Sl(i,t.unit,t.unit_before):"";f({typed:{key:Ji(i),text:d,unit:c}}),Ft(i,t1(t,d,c))};return s`<input
    id=${Ji(i)}
    .value=${P(Dl(i))}
    @input=${r}
    @blur=${Al}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${wo(i)?"true":"false"}
  />`}function t1(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Dt(e)?`${e.trim()} ${n}`:e}function we(t,e){let n=Ji(t.pointer),o=wo(t.pointer),i=e1(t.pointer)??t.hint,r=t.unit?` (${Sl(t.pointer,t.unit,t.unit_before)})`:"";return s`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${r}</label> ${gp(t,o||i?`${n}-said`:void 0,e)}
    ${$t(n,o,i)}
  </div>`}function e1(t){let e=$(z(),t),n=hp(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function Pl(t){let e=t.toLowerCase(),{file:n,shipped:o}=it().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===e)?.file}async function ms(t){let{open:e}=it();try{if(await an(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Vs()})}catch(n){if(!(n instanceof w))throw n;return yc(n)}a.run.file&&(ze(),st()),t(e.file)}var qn="/shape/points",wb=500,yo=(t,e)=>[qn,t,...e?[e]:[]].join("/"),yb=t=>Array.from({length:t.least},()=>({}));function vb(t){let e=ce(z(),qn),n=o1(),{complaint:o}=it(),i=o?.field===qn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(r=>s`<span
              >${r.label} (${Sl(yo(-1,r.name),r.unit,kb(t,e.length,r.name))})</span
            >`)}
      </div>
      ${e.map((r,l)=>n1(t,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=wb} @click=${()=>Fl(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function n1(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=i1(e),r=l=>{let{name:d,label:c,unit:p}=t.columns[l],m={label:c,pointer:yo(e,d),unit:p,unit_before:kb(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return gp(m,i?`point-${e}-said`:void 0,r1(t,e,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Fl(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>xb(t,e)}>×</button>
    ${i?s`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function o1(){let t=[...kr(z()),...la(z())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function i1(t){let{complaint:e}=it();return wo(yo(t))??(e?.about===yo(t)?e.line:void 0)}function kb(t,e,n){let o=(i,r)=>Oe($(z(),yo(i,r)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function Ol(t,e){queueMicrotask(()=>document.getElementById(Ji(yo(t,e)))?.focus())}function Fl(t,e){let n=[...ce(z(),qn)];n.length>=wb||(n.splice(e,0,{}),Al(),Ft(qn,n),Ol(e,t.columns[0].name))}function xb(t,e,n=0){let o=ce(z(),qn).filter((i,r)=>r!==e);Al(),Ft(qn,o.length?o:[{}]),Ol(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function r1(t,e,n){let[o,i]=t.columns.map(({name:r})=>r);return r=>{let l=!Dl(yo(e,o))&&!Dl(yo(e,i));if(r.key==="Enter"&&r.shiftKey)Fl(t,e+1);else if(r.key==="Enter"&&n===0)Ol(e,i);else if(r.key==="Enter"&&e+1<ce(z(),qn).length)Ol(e+1,o);else if(r.key==="Enter")Fl(t,e+1);else if(r.key==="Backspace"&&l&&ce(z(),qn).length>1)xb(t,e,e>0?1:0);else return;r.preventDefault()}}var _p={weighings:[""]},$p=/\.(3mf|gltf|glb)$/i;function Ml(t){let e=Vn(t);return e?{kind:t,points:yb(e)}:{kind:t}}var s1=()=>Ft("/water",_p),bn=t=>Ee(z(),t),fs=()=>vr(z());function Tb(t){let{open:e,answer:n,is_old:o}=it();return s`${gn(e,()=>{ms(t)})} ${_n(e)}
    ${e.shipped?u:Ui(a.files?.moulds.find(i=>i.file===e.file))}
    ${bn("shape")&&bn("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${bn("shape")?ct("Shape",fs(),Object.entries(hh),a1):u}
    <div class="beside ${Vn(fs())?"rows":""}">
      <div>
        ${bp()} ${bn("shape")?u1():u} ${bn("mesh")?d1():u}
        ${wp()} ${bn("water")?p1():u} ${f1()}
      </div>
      <div class="stays">${Ki(n,o,Sb())} ${h1(t)}</div>
    </div>`}function a1(t){let e={...it().shapes,[fs()]:z().shape};v(it(),{shapes:e,answer:void 0}),Ft("/shape",e[t]??Ml(t))}function l1(){let{shipped:t,file:e}=it().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function bp(){let t=l1();return we({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function u1(){let t=fs(),e=Vn(t);return s`${$i(t).length?s`<div class="row">
          ${$i(t).map(n=>we({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?vb(e):u}`}function wp(t=Xu(z())){return s`<div class="row">
      ${t?u:we({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${we({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${we({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${we({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var yp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],vp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function d1(){let t=o=>String($(z(),`/mesh/${o}`)??""),e=(o,i,r)=>{let l=wo(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ct(o,t(i),r,d=>Ft(`/mesh/${i}`,d||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=wo("/mesh/file");return s`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${$p.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",yp)} ${e("Which way is up","up",vp)}
    ${t("role")==="body"?c1():u}
    <div class="row">
      ${we({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${we({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function c1(){let t=$(z(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ct("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>Ft("/mesh/on_board",e==="yes"?!0:void 0))}`}function p1(){let t=$(z(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=r=>Ft("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(z(),"/water/weighed_in"),i=e===void 0||e==="brim"?wo("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${we({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ct("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?we({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?we({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ct("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>Ft("/water/weighed_in",r))}
    <div class="row">
      ${ce(z(),"/water/weighings").map((r,l)=>we({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},m1(l)))}
    </div>
    ${it().complaint?.field==="/water/weighings"?s`<p class="complaint">${it().complaint.line}</p>`:u}
    <button type="button" @click=${Rb}>One more round</button>`}function Rb(){let t=ce(z(),"/water/weighings").length;Ft(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var m1=t=>e=>{e.key==="Enter"&&(t+1===ce(z(),"/water/weighings").length?Rb():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function f1(){let t=(e,n)=>s`<button type="button" @click=${n}>${e}</button>`;return s`<div class="choice">
    ${bn("shape")?u:t("Add measures, as a check",()=>Ft("/shape",Ml("block")))}
    ${bn("shape")&&bn("mesh")?t("Leave the measures out",()=>Ft("/shape",void 0)):u}
    ${bn("water")?t("Leave the water out",()=>Ft("/water",void 0)):t("Add weighed water",s1)}
  </div>`}function Sb(){let t=la(z()).length;return t?[...xr(z()),t===1?"the other number of a point":`the other numbers of ${t} points`]:xr(z())}function h1(t){let e=String(z().name??"").trim(),n=Pl(e),{open:o,answer:i,is_old:r,complaint:l}=it(),d=i&&!r&&!l&&!Sb().length&&e&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ms(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:s`<p class="hint">Give it a name first.</p>`} ${kp(e,n)}
    ${l?s`<p class="alarm" role="status">${g1(l.field)}${l.line}</p>
            ${ps(z(),l.keep,Ft)}`:u}`}var kp=(t,e)=>e?s`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function g1(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=$i(fs()).find(({name:r})=>t===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var _1=200*2**20;async function Ab(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),Ft("/name",t.name.replace(/\.\w+$/,"")),t.size>_1){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return v(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Pf(t,o=>v(e,{share:o}));v(e,{share:1,upload:n.file}),await Pb(e)}catch(n){v(e,{complaint:n instanceof w?n.message:String(n)})}}async function Pb(t){let e=t.questions+1;v(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=t;try{let l=await Di({file:n,unit:o,role:i,up:r});e===t.questions&&v(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(e!==t.questions)return;let d=o?t.sizes:y1(l.complaint),c=d.length&&!o?void 0:L(l.complaint);v(t,{sizes:d,complaint:c,is_measuring:!1})}}async function $1(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let r=await Tf({file:n,unit:o,up:i});e===t.questions&&v(t,{inspection:r})}catch(r){if(!(r instanceof w))throw r;e===t.questions&&v(t,{complaint:L(r.complaint)})}}function b1(t){return t.inspection?s`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?s`<ul>
            ${t.inspection.defects.map(w1)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{$1(t)}}>List every defect of the mesh</button>`}var w1=({text:t})=>s`<li>${t}</li>`;function y1({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function xp(t,e){v(t,e),Pb(t)}function Ob(t,e){let n=l=>{let d=l.target;Ab(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),Ab(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?v1(a.mesh,t,e):u}`}function v1(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?s`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!$p.test(t.name)?s`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${ct("Unit of the file's numbers",t.unit,i,r=>xp(t,{unit:r}))}`:u}
    ${t.complaint?s`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?b1(t):u}
    ${t.upload&&(t.unit||t.answer)?s`<h4>What it shows</h4>
            ${ct("Role",t.role??t.answer?.gauge.role,yp,r=>xp(t,{role:r}))}
            <h4>Which way is up</h4>
            ${ct("Up",t.up??"",vp,r=>xp(t,{up:r||void 0}))}`:u}
    ${t.answer?s`${Ki(t.answer)} ${k1(t,e,n)}`:u}`}var Fb=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function k1(t,e,n){let o=String(z().name??"").trim(),i=Pl(o),r=o&&!i&&!t.is_keeping;return s`${bp()} ${wp(Fb(t))} ${kp(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Db(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Db(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Db(t,e,n){v(t,{is_keeping:!0});try{let o=x1(t,await Of(t.upload,R1(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await T1(o))return e(o);Li(o,"mesh",it().title),await ms(n),v(t,{complaint:a.mould?.complaint?.line})}catch(o){v(t,{complaint:o instanceof w?o.message:String(o)})}v(t,{is_keeping:!1})}function x1(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=z();return{...i,...Fb(t)||o===void 0?{}:{cavities:o},mesh:n}}async function T1(t){try{return await on({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof w&&e.status===422)return!1;throw e}}var R1=t=>bi(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Ll={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Mb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Lb(t){At(),pn();let e={...Mb,shape:Ml("block")};t==="mesh"?Li(Mb,"mesh",Ll[t]):Li(t==="water"?{...e,water:_p}:e,"form",Ll[t]),Cl()}async function Bb(t,e){pn();let n=await P_(t,e);return n&&Cl(),n}async function Bl(t){pn(),await O_(t)&&Cl()}function S1(t){Li(t,"form","More about this mould"),Cl()}function Cl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Cb(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Ob(t,S1):Tb(t)}
  </section>`}var Tp=()=>f({chosen_mould:void 0});function hs(t,e){At();let n=a.files?.moulds.find(r=>r.file===t),o=a.catalogue.find(r=>r.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};f({chosen_mould:i}),Wb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var A1=2e3;async function Wb(t){if(t===a.chosen_mould)try{v(t,{answer:await Di({file:t.file})}),v(t,{complaint:void 0})}catch(e){v(t,{complaint:e instanceof w?e.message:String(e)}),e instanceof w&&e.may_pass&&window.setTimeout(()=>{Wb(t)},A1)}}var D1=t=>a.files?.moulds.find(e=>e.file===t);function Ib(t,e){let n=()=>e(async()=>{await Bb(t.file,t.shipped)&&Tp()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?s`<p role="status">${t.told}</p>`:u} ${t.note?s`<p>${t.note}</p>`:u}
    ${ul(D1(t.file))}
    ${t.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?Ki(t.answer):t.complaint?u:s`<p role="status">Measuring ...</p>`}
        ${Rl(hb(t.file,t.answer?.gauge))}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:F1(t,e)}
    </div>
  </section>`}var Eb=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=fp;function P1(t){let e=Eb(t)?t.slice.trim():"";return Dt(e)?`${e} mm`:e||void 0}var O1=t=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${P(t.slice)}
      @input=${e=>v(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function F1(t,e){let n=kl(t.sell),o=P1(t),i=r=>()=>e(()=>za({mould:t.file,name:t.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${xl("mould-sell",t.sell,r=>v(t,{sell:r}))}
      ${Eb(t)?O1(t):u}
    </div>
    ${n?u:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function gs(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l,stock:d}=a;if(t!=="reading")return Rn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:t==="moulds"&&l?{name:"chosen",file:l.file,of:l}:t==="order"?{name:t,file:n?.open.file,of:n}:t==="trail"?{name:t,file:d.trail?.of}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:gr[o],file:e.file,of:e}}async function jb({name:t,file:e}){let n=At();if(!(!(t===gr.apart&&a.formulas.apart?.file===e)&&!await Ka())&&n())try{await M1(t,e)}catch(i){if(!(i instanceof w||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function M1(t,e=""){let n=t;if(Rn(n))return Nb(e,n);let o=["pour","pipe"].find(i=>gr[i]===t);if(o){await Nb(e,"formula"),a.view==="formula"&&se(o);return}if(t===gr.apart)return Kr(e);if(t==="order")return Jr(e);if(t==="trail"&&e)return Xt(e);await L1(t,e)}async function Nb(t,e){t===a.run.file||!t?f({view:a.run.file?e:"runs",typed:void 0}):await Wn(t,e)}async function L1(t,e){let n=t;Tp(),pn(),f({view:de(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=ga(ie).find(i=>i.id===e);t==="describing"&&o&&await Bl(o),t==="chosen"&&hs(e),t==="shelf"&&B1(),C1()}function B1(){r_(),po()}async function C1(){try{await De(),Na()}catch(t){if(!(t instanceof w))throw t;f({list_complaint:t.message})}}var ye={id:""},Gt,Rp=!1,Ap=new Map,Wl=JSON.parse(sessionStorage.getItem("left")??"{}");function qb(){let t=gs();Rp||!t||Gt&&xe(Gt)===xe(t)||(Il(),Ub(t))}function Ub(t){let e=!Gt||Gt.name===t.name&&Gt.of!==void 0&&Gt.of===t.of;if(Gt=t,e)return Vi();ye={id:crypto.randomUUID(),before:location.hash},Ap.set(ye.id,t.of),history.pushState(ye,"",xe(t)),requestAnimationFrame(I1)}function Vi(){Gt&&(ye.id||(ye={id:crypto.randomUUID()}),Ap.set(ye.id,Gt.of),history.replaceState(ye,"",xe(Gt)))}var W1="button, input, select, summary, a[href], [tabindex]",Sp=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),zb=t=>[...document.querySelectorAll(`#main :is(${W1})`)].filter(e=>Sp(e)===t);function Il(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Wl[ye.id]={scroll:scrollY}:Wl[ye.id]={scroll:scrollY,words:Sp(t),nth:zb(Sp(t)).indexOf(t)}}function I1(){scrollTo(0,0),document.activeElement?.closest("#main")||Kb()}function Kb(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Jb(){let{scroll:t,words:e,nth:n=0}=Wl[ye.id]??{scroll:0},o=e===void 0?void 0:zb(e)[n];o?o.focus({preventScroll:!0}):Kb(),scrollTo(0,t)}var Yt=t=>Vb({name:t,file:Rn(t)?a.run.file:void 0});async function Vb(t){Il(),await Dp(t,()=>{let e=gs();e&&!(Gt&&xe(Gt)===xe(e))&&Ub(e)})}async function Dp(t,e){Rp=!0;try{await jb(t)}finally{Rp=!1,e()}}function Qb(t){ye.before===xe(t)?history.back():Vb(t)}var Hb=Promise.resolve();function E1(t,e){Il();let n=()=>history.state?.id!==t?.id;Hb=Hb.then(async()=>{if(!e)return Vi();if(n())return;let o=t?Ap.get(t.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await Dp(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{Gt=gs(),!n()&&(ye=t??{id:crypto.randomUUID()},Vi(),requestAnimationFrame(Jb))})})}function Gb(){history.scrollRestoration="manual",addEventListener("popstate",t=>{cf()||E1(t.state,Wu(location.hash))}),addEventListener("pagehide",()=>{Il(),sessionStorage.setItem("left",JSON.stringify(Wl))})}async function Yb(){let t=Wu(location.hash);t&&(ye=history.state??{id:""});let e=At();await x_(Lf(t)),t&&e()&&N1(t)&&await Dp(t,()=>{Gt=gs(),Vi(),requestAnimationFrame(Jb)}),await hc()}var N1=t=>!Gt||xe(Gt)===xe(t);function ri(t=a.plan?"The figures below are out of date.":"No figures yet."){let e=$l()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${e?s`<p class="alarm">
                <strong>${t}</strong>
                ${Un(e.field)}${L(e)}
              </p>
              ${e.is_fault?s`<button type="button" @click=${Op}>Ask again</button>`:u}
              ${Me("run")?ps(a.run.now,e.keep,(n,o)=>Z("run",n,o)):Pp(e)}
              ${j1()?s`<button type="button" @click=${Fp}>Go to the field</button>`:u}`:u}
    </div>
    ${ls()}`}function Pp({keep:t}){let{studio:e}=a.beside;return e&&Me("studio")?ps(e.now,t,(n,o)=>Z("studio",n,o)):u}function Un(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function Op(){st(),a.run.failed&&ln()}function j1(){if(Zb())return!0;let t=mn();return t?document.activeElement!==t:H1()}var H1=()=>a.view!=="set-up"&&Me("run")&&a.complaint!==void 0&&a.complaint.field!=="",Zb=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&Me(t));function Fp(){let t=mn(),e=Zb();if(t)return ee(t);e?se(e):Yt("set-up"),q1(()=>ee(mn()))}function q1(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Xb=()=>[...fa().map(t=>gn(t)),...ma().map(_n)];function tw(){let t=a.formula_of,e=a.formulas[t];if(!e)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Xb()}${ri()}
      <p>Reading the formula ...</p>
      ${Lp(t)}`;let n=a.plan&&qi(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return s`${Xb()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${U1(t)}</p>
    <div class="choice">${Lp(t)}${t==="apart"?z1():u}</div>
    ${Ui(a.files?.formulas.find(i=>i.file===e.file))} ${K1(t,o,n)} ${nw(t)}
    ${tp(t)} ${np(t,o)} ${ip(t)} ${Qc(t)}
    <div class="choice">${Lp(t)}</div>`}var ew=t=>[nw(t),tp(t),np(t,void 0),ip(t),Qc(t)],Mp=()=>String(a.run.now.name??a.run.file);function U1(t){let e=a.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${Mp()}".${n}`:o?`Base and topping of "${Mp()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${Mp()}".${n}`}function Lp(t){let e=t==="apart";return s`<button type="button" class="strong" @click=${()=>Qb(e?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function z1(){return s`<button type="button" @click=${()=>{gc("pour")}}>Use it as the base</button> ${be()?s`<button type="button" @click=${()=>{gc("pipe")}}>Use it as the topping</button>`:u}`}function K1(t,e,n){return s`<section class="strip" aria-label="What comes of it">
    ${e&&n?s`<dl>
            ${[...J1(t,n),...V1(t,e)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?_o(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Q1(t)}
  </section>`}function J1(t,e){let n=t==="pipe"?qc(e,e.whippings[0]):"";return n?[["For one whipping",n]]:Qt(e.whole)?[["For one batch",Ze(e.whole,e.batch)]]:[]}function V1(t,e){let n=fo(t).length?" \u26A0":"";return[["Fats",x(H(a.units,e.fats_g))],["Superfat as weighed",`${ae(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...fl(e).map(({one:o})=>[o.name,x(ii(a.units,o))])]}function Q1(t){let e=$l()?void 0:a.complaint;if(!e)return s`<div role="status"></div>
      ${ls()}`;let n=Me(t),o=n&&e.field!==""&&document.activeElement!==mn();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Un(e.field)}${L(e)}
      </p>
      ${e.is_fault?s`<button type="button" @click=${Op}>Ask again</button>`:u}
      ${o?s`<button type="button" @click=${()=>mn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${ls()}`}function nw(t){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:t,at:"/name",wide:!0})}
    ${F({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Bp=t=>v(a.new_formula,t);function ow(){let{name:t,copied:e}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>pt(async()=>{await i(t.trim()),Bp({name:"",copied:""})});return s`${Be("Formulas")}
    <section aria-label="Formulas">
      ${Xe(n,G1)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${P(t)}
            @input=${i=>Bp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(R_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Bp({copied:i.target.value})}
          >
            <option value="" .selected=${P(e==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${P(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>S_(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${Ce("formula")}`}function G1(t){let e=t.changed?[`changed ${N(t.changed)}`]:[];return $n({kind:Io,one:t,facts:e,open:()=>Kr(t.file)})}function Y1(t){pn(),hs(t,`Saved in ${t}.`)}function iw(){let{chosen_mould:t}=a;return s`${Be("Moulds")}
  ${t?Ib(t,pt):Cb(Y1)??s`${eA()} ${Z1()}`}`}function Z1(){let t=(a.files?.moulds??[]).filter(n=>!n.shipped),e=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Xe([...t,...e],X1)} ${Ce("mould")}
  </section>`}function X1(t){let e=t.shipped?tA(t.file):iA(t.file),n=()=>Promise.resolve(hs(t.file));return $n({kind:ie,one:t,facts:e,picture:t.file,open:n})}var tA=t=>a.catalogue.filter(e=>e.path===t).map(e=>`${x(vt(a.units,e.brimful_ml))}, ${V(e.cavities,"cavity","cavities")}; ${e.description}`);function eA(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${nA()}
    <div class="choice">
      ${Object.entries(Ll).map(([t,e])=>s`<button type="button" @click=${()=>Lb(t)}>${e}</button>`)}
    </div>
  </section>`}function nA(){return ga(ie).map(t=>{let e=String(wt(t.text)?.name??"").trim()||oA(t)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>pt(()=>Bl(t))}>Continue</button>
        <button type="button" @click=${()=>{Yn(ie,t.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var oA=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function iA(t){let e=uc(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[x(vt(a.units,e.brimful_ml)),V(e.cavities,"cavity","cavities")]:["measuring ..."]}var rA=300,sA=1e3;function El(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=a,i=t?.of===e&&t?.wish===n;!i&&!o&&aA();let r=i?t?.complaint:void 0;return{quote:t?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Wp(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var _s,Cp=!1;function aA(){let{plan:t,quote_wish:e}=a;Cp||_s?.of===t&&_s?.wish===e||(window.clearTimeout(_s?.timer),_s={of:t,wish:e,timer:window.setTimeout(()=>{uA()},a.quoted?rA:0)})}var Nl=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function rw(t,{numbers:e="",by:n,figure:o}){let i=Nl(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var jl=()=>rw({file:a.run.file,run:a.run.now},a.quote_wish);function lA(t,{numbers:e=""}){return t.field==="/sell"&&Nl(e)?{...t,file:"",field:"sell"}:t}async function uA(){_s=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=a;if(!(!e||!n||i)){Cp=!0;try{let r=await vf(rw(n,o));t===a.run&&f({quoted:{of:e,wish:o,quote:r}})}catch(r){if(!(r instanceof w))throw r;if(t!==a.run)return;let l=lA(r.complaint,o);f({quoted:{of:e,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Wp,sA)}finally{Cp=!1}}}var dA=300,cA=1e3,Ep=t=>{let{by:e,figure:n}=a.quote_wish;return[t.open.now,t.open.file,t.times,e,n,a.plan,qo(),a.recorded]},sw=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function aw(){let t=Mt(),{quoted:e}=t;if(!Fn(t.open.now)||t.open.theirs)return{is_old:!0};let n=sw(e?.of,Ep(t));!n&&!a.is_old&&pA(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Np(){let{quoted:t}=Mt();t&&v(Mt(),{quoted:{...t,of:[]}})}function jp({open:t,times:e}){let{by:n,figure:o}=a.quote_wish,i=Nl(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Hl,Ip=!1;function pA(t){let e=Ep(t);Ip||sw(Hl?.of,e)||(window.clearTimeout(Hl?.timer),Hl={of:e,timer:window.setTimeout(()=>{mA(t)},t.quoted?dA:0)})}async function mA(t){if(Hl=void 0,t===a.order){Ip=!0;try{if(await Se(),await fe(),await vi(),await Ia(),!Fn(t.open.now))return;let e=Ep(t);await fA(t,e)}catch(e){if(!(e instanceof w))throw e}finally{Ip=!1,v(t,{})}}}async function fA(t,e){try{v(t,{quoted:{of:e,quote:await kf(jp(t))}})}catch(n){if(!(n instanceof w))throw n;v(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===a.order&&Np(),cA)}}function lw(){let{now:t}=Mt().open;return s`<div class="row">
      ${mt({of:"order",label:"Pieces that are made already",at:"/ready",answers:[["take","take them first"]],unsaid:"leave them",optional:!0,chosen:t.ready==="take"?"take":""})}
    </div>
    ${un(t).map((e,n)=>hA(e.ready,n))}`}function hA(t,e){let n=`/lines/${e}/ready`;if(t===void 0)return s`${C("order",n)}`;let o=Array.isArray(t)?`takes pieces of ${t.length===1?"batch":"batches"} ${t.join(", ")} alone`:t==="take"?"takes pieces that are made already":"leaves them";return s`${C("order",n)}
    <p>
      Line ${e+1} ${o}, whatever the order says.
      <button type="button" @click=${()=>Z("order",n,void 0)}>Line ${e+1}: as the order says</button>
    </p>`}var uw=(t,e)=>Z("order",`/lines/${t}/ready`,e);var Qi={of:"order",at:"/lines",in_order:!0,stays:!0};function dw(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${C("order","/lines")} ${k(Qi).map((t,e)=>gA(e))} ${_A()} ${lw()}
  </section>`}var cw=()=>(a.files?.runs??[]).filter(({shipped:t})=>!t);function pw(t){let e=Dn(Mt().open.file,t);return a.files?.runs.find(n=>n.file===e)}var mw=t=>pw(t)?.name||t;function fw(t){let e=un(Mt().open.now).map(({run:n})=>n);return cw().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function gA(t){let{run:e}=un(Mt().open.now)[t]??{run:""},n=`/lines/${t}`,o=pw(e)?.pieces,i=e?mw(e):`line ${t+1}`;return s`<div class="row" id=${E(Qi,t)} role="group" aria-label=${i}>
    ${mt({of:"order",label:"Run",at:`${n}/run`,answers:fw(e),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${V(o,"piece")}`})}
    ${k(Qi).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${K(Qi,t,i)}
  </div>`}function _A(){let t=fw();return cw().length?t.length?s`<div class="row">
    ${mt({of:"order",label:k(Qi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&U(Qi,{run:e},mw(e))})}
  </div>`:s`${u}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var $A=300,bA=1e3,hw=()=>new Date().toDateString(),wA=()=>({file:a.run.file,run:a.run.now});function yA(){let{run:t,plan:e}=a;return{known:a.run_days,rests_on:()=>[a.plan,hw()],is_ready:e!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??wA(),is_open:()=>t===a.run,keep:n=>f({run_days:n})}}function vA(){let{order:t}=a;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,a.plan,qo(),a.recorded,hw()],is_ready:Fn(e.now)&&!e.theirs&&!a.is_old,written:async()=>{await Se(),await fe(),await vi(),await Ia()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===a.order,keep:n=>v(t,{days:n})}}var ql=t=>t==="run"?yA():vA(),gw=t=>ql(t).question(),_w=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Gi(t){let e=ql(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=_w(n?.of,e.rests_on());!i&&o&&kA(t,e);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function Up(t){let e=ql(t);e?.known&&e.keep({...e.known,of:[]})}var Hp=new Map,qp=new Set;function kA(t,e){let n=e.rests_on(),o=Hp.get(t);qp.has(t)||_w(o?.of,n)||(window.clearTimeout(o?.timer),Hp.set(t,{of:n,timer:window.setTimeout(()=>{xA(t)},e.known?$A:0)}))}async function xA(t){Hp.delete(t);let e=ql(t);if(e?.is_ready){qp.add(t);try{await e.written(),await TA(t,e)}catch(n){if(!(n instanceof w))throw n}finally{qp.delete(t),f({})}}}async function TA(t,{known:e,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let d=await xf(o());i()&&r({of:l,days:d})}catch(d){if(!(d instanceof w))throw d;if(!i())return;r({of:l,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Up(t),bA)}}var Qp=864e5,vo=t=>Math.round(Date.parse(`${t}T00:00Z`)/Qp),$w=t=>new Date(t*Qp).toISOString().slice(0,10),RA=t=>new Date(t*Qp).getUTCDay()===1,Kp=40,Jp=18,SA=7,Vp=class{#n;#t;constructor({calendar:e}){this.#n=vo(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(vo(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(RA);return e.filter((n,o)=>o%Math.ceil(e.length/SA)===0).map($w)}is_at_end=e=>vo(e)-this.#n>.88*this.#t};function bw(t){let e=new Vp(t),{calendar:n}=t;return s`<figure class="day-strip">
    <p class="aside">${kt(n[0].day)} to ${kt(n.at(-1).day)}</p>
    ${zp(t,e,20,OA(e))}
    <p>Hours of your making days</p>
    ${zp(t,e,Kp+2,FA(t,e))}
    ${t.batches.map(o=>s`<p>${WA(t,o)}</p>
          ${zp(t,e,Jp+6,MA(t,e,o))}`)}
    <figcaption>${EA(t)}</figcaption>
  </figure>`}var zp=(t,e,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${AA} ${PA(t,e)}
      ${e.mondays().map(i=>R`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${DA(t).map(i=>R`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,AA=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,DA=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),PA=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),OA=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>R`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${n$(e)}</text>`);function FA({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,r,l)=>{let d=Kp*l/n;return R`<rect class=${i} x=${e.at(r,.1)} width=${e.wide(.8)} y=${1+Kp-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>R`${o("free",i,r)} ${o("used",i,l)}`)}function MA(t,e,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=vo(_)-vo(m);return R`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(b)} height=${Jp} />`},d=o===i,c=(p,m)=>CA(t,p,n).map(_=>R`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Jp/2} r=${m} />`);return R`${l("mould",o,d?$w(vo(o)+1):i)}
    ${vo(i)<vo(r)?l("cure",i,r):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var LA=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),BA=({lyes:t},e)=>t.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===e.of&&i.join()===e.runs.join()&&r===e.batch)).map(({made:n})=>n);function CA(t,e,n){let o=t.days.filter(({acts:i})=>i.some(r=>r.act===e&&LA(r,n)));return[...new Set([...o.map(({day:i})=>i),...e==="chill"?BA(t,n):[]])]}function WA({asked:t,batches:e},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=e.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var IA=(t,e)=>s`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,$s=t=>R`<rect class=${t} x="1" y="1" width="24" height="18" />`;function EA({calendar:t,days:e}){let n=i=>e.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,$s("used"),"hours used"],[!0,$s("free"),"hours free"],[!0,$s("mould"),"in the mould"],[!0,$s("cure"),"curing"],[t.some(({off:i})=>i),$s("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>IA(i,r))}var si=t=>["/work",t].join("/");function Ul(t=!1){let e=(n,o,i,r=!1)=>h({of:"studio",label:o,at:si(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var NA=({cautions:t})=>t.filter(({severity:e})=>e!=="danger").map(({severity:e,text:n})=>e==="note"?s`<p>${xt(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${xt(n)}</p>`),bs=(t,e,n="")=>s`<tr>
    <th scope="row">${t}</th>
    <td><b>${x(e)}</b></td>
    <td>${n}</td>
  </tr>`;function jA(t){let{units:e}=a,{made:n,for:o,lye_of:i,pot:r}=t,l=r.full_pot_g===null?"":`with its pot ${x(X(e,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${kt(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${xt(o)};
      ${S(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${bs("Water, distilled",X(e,at(r,"water_")))}
        ${r.alkalis.map(d=>bs(d.name,X(e,at(d,""),"down")))}
        ${bs("Lye solution in the pot",X(e,at(r,"lye_")),l)}
        ${r.shares.map(d=>s`${bs(`Out of it for ${d.batter}`,X(e,at(d,"lye_"),"down"),`superfat then ${ae(d.superfat_percent)}`)}
            ${d.top_up_g>0?bs(`and plain water to ${d.batter}`,X(e,at(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${NA(t)}`}var ww=({lyes:t})=>t.map(jA),yw=({lyes:t,notes:e})=>[...new Set([...t.flatMap(({cautions:n})=>n),...e].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ai,ws="",HA=2**20,vw=t=>ai?.of===t.file?{...t,since:{name:ai.name,text:ai.text}}:t;function kw(t){let e=async n=>{let o=n.target;await UA(t,o.files?.[0]),o.value=""};return s`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${n=>{e(n)}}
      />
      <p id="earlier-calendar-said" class=${ws?"complaint":"hint"}>
        ${ws||"Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${ai?.of===t?qA(ai):u}
  </div>`}var qA=({name:t})=>s`<p role="status">
    The calendar file will cancel what only <b>${t}</b> has.
    <button type="button" @click=${()=>zA(t)}>Leave ${t} out</button>
  </p>`;async function UA(t,e){e&&(ws=e.size>HA?`${e.name} is too large for a calendar of this program.`:"",ai=ws?void 0:{of:t,name:e.name,text:await e.text()},D(ws||`${e.name} is taken into account.`))}function zA(t){ai=void 0,D(`${t} is left out.`),Q()}var li=t=>v(a.printing,t);function xw(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Tw(t){if(!a.printing.is_working){li({is_working:!0,told:"Making it ...",on:a.view});try{await KA(),li({told:await t()})}catch(e){li({told:e instanceof Error?e.message:String(e)})}li({is_working:!1})}}async function KA(){await Se(),await fe();let t=a.view==="order"?a.order?.open:void 0,e=On("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var wn=()=>a.printing.on===a.view?a.printing.told:"",jt=(t,e)=>()=>Tw(async()=>{let n=URL.createObjectURL(await rn(e));return xw(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),zl=t=>()=>Tw(async()=>(xw(await Df(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),JA=t=>{li({paper:t}),localStorage.setItem("paper",t)},Kl=()=>ct("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],JA),Ot=(t,e,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,yn=({words:t,kind:e,file:n,of:o,is_asleep:i},r="")=>s`${Ot(`${t}, to print`,zl({kind:e,...o}),r,i)}
  ${a.files?.makes_pdf?Ot(`${t}, PDF`,jt(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,vn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var kn={run:"/money/currency",studio:"/currency"},Jl={run:"/money/prices",studio:"/prices"},tn=()=>fn(kn)!==void 0;function Yi(){let[t,e]=[g("run",kn.run),g("studio",kn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[kn,Jl]}var Vl=()=>O("studio",kn.studio)||String(fn(kn)??"");async function Rw(t,e=""){if(t==="run"||!a.order)return;let{open:n}=a.order,o=un(n.now).map(({run:r})=>Dn(n.file,r)),i=o.find(r=>Ql(r,e))??o[0];(!o.includes(a.run.file)||o.some(r=>Ql(r,e)))&&await Wn(i,"set-up")}var Ql=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),Sw=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function ys(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Y(t,n));if(o)return o}}var Aw=(t,e)=>{dt("set-up studio"),Vt("studio",t),Yt("set-up"),Sw(()=>ee(ys("studio",e)))};async function Dw(t){await Rw(t),lt()||await ka(),Aw("days","/days/making/monday")}var VA=["order","run","pour","pipe","studio"];async function Gl(t,{file:e,field:n}){if(t==="order"&&Ql(a.order.open.file,e))return ee(ys("order",n));await Rw(t,e);let o=VA.find(i=>Ql(io(i)?.file??"",e));if(o==="pour"||o==="pipe")se(o);else{if(o==="studio")return Aw(n.startsWith("/work")&&tn()?"money work":"days",n);if(ys("run",n))return ee(ys("run",n));Yt("set-up")}Sw(()=>ee(ys(o??"run",n)))}function Yl(t){let{days:e,complaint:n,is_old:o}=Gi(t);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?QA(t,n):u}
    ${e?s`<div class=${o?"old":""}>${GA(t,e)}</div>
            ${lD(t,o)}`:n?u:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function QA(t,e){let{field:n,is_fault:o}=e;return o?s`<p class="alarm" role="status">${L(e)}</p>
      <button type="button" @click=${()=>Up(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!lt()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{Dw(t)}}>To my making days</button>`:["/work",si("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Gl(t,{...e,field:si("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Un(n)}${xt(L(e))}</p>
    ${n?s`<button type="button" @click=${()=>{Gl(t,e)}}>Go to the field</button>`:u}`}var GA=(t,e)=>s`${sD(e)} ${ZA(t,e)} ${YA(e)} ${bw(e)} ${eD(t,e)}
  ${ww(e)} ${iD(e)} ${rD(e)} ${aD(t,e)}`,YA=({asked:t})=>t.flatMap(({ready:e})=>(e?.lines??[]).filter(({text:n})=>n).map(({text:n})=>s`<p><b>${n}</b></p>`)),Gp=(t,e,n)=>s`<small>${t?e:n}</small>`;function ZA(t,e){let{kept:n,promise:o,promise_proved:i,from:r}=e;return n===null?s`<p class="when">
        Begun today, ${kt(r)}, promise it for <b>${kt(o)}</b>.
        ${Gp(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>ee(document.getElementById(Y(t,"/due")))}>
        Give it a due day
      </button>`:n?XA(e):tD(e)}function XA({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:d}]=t;return s`<p class="when">
      Begin on <b>${kt(e)}</b> at the latest to have ${V(l,"piece")} by
      <b>${kt(r)}</b>.
      ${Gp(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?s`<p>The last day to pour any of it is ${kt(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${kt(o)}.
      ${i?u:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function tD({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${V(o,"piece")} by ${kt(r)}, the rest on <b>${kt(l)}</b>.`:s`none of the ${V(o,"piece")} by ${kt(r)}, all of them on <b>${kt(l)}</b>.`;return s`${t.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Gp(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var eD=(t,{days:e})=>s`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>s`<li>
            <h3>${kt(n.day)} <small>${nD(n)}</small></h3>
            <ul>
              ${n.acts.map(oD)}
            </ul>
          </li>`)}
    </ol>
  </details>`,nD=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${Xa(e)} of ${Xa(t)}`:"",oD=({text:t,min:e,caution:n})=>s`<li>
    ${xt(t)}${e?s` <small>${Xa(e)}</small>`:u}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function iD({what_if:t,kept:e}){if(!t.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${kt(i)} at the latest`:`ready by ${kt(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function rD({extras:t}){return t.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${e} fills ${V(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function sD(t){let e=yw(t);return e.length?s`<div class="dangers">
    ${e.map(n=>s`<p class="danger"><strong>${ge}</strong> ${xt(n)}</p>`)}
  </div>`:u}function aD(t,{notes:e,studio:n}){let o=e.filter(({severity:l})=>l!=="danger"),i=({severity:l,text:d})=>l==="note"?s`<p>${xt(d)}</p>`:s`<p class="minded"><strong>Caution</strong> ${xt(d)}</p>`,r=({field:l})=>l?s`<button type="button" @click=${()=>{Gl(t,{file:n,field:l})}}>Say it</button>`:u;return o.length?s`<h3>To mind</h3>
        ${o.map(l=>s`<div class="day-note">${i(l)} ${r(l)}</div>`)}`:u}function lD(t,e){let n=gw(t),o=vn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Ot("Calendar file (.ics)",jt(`${o} days.ics`,{kind:"calendar",days:vw(n)}),"",e)}
      ${yn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${Ot("Table of the days (.csv)",jt(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${kw(n.file)}
    <p role="status">${wn()}</p>
  </section>`}var ko=t=>(e,n,o="")=>s`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,vs=(t,e)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function ks(t,e,n,o){let i=`quote ${e}`,r=a.open.has(i),l=`quote-${e.replaceAll(/\W/g,"-")}`,d=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:u}
    @click=${()=>Et("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${ko(t)(d,n)}
  ${r?s`<tr class="opened">
          <td colspan=${t.length+1} id=${l}>${t.map(o)}</td>
        </tr>`:u}`}var xs=(t,e)=>s`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Zl({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var Xl=(t,{items:e},n)=>xs(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),tu=(t,e)=>ks(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${uD(e(n),n.cash)} ${dD(n.cash)}`),uD=(t,e)=>s`${xs(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,dD=t=>xs("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>s`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function Ts(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var Pw=t=>`${S(t,1)} %`;function cD(t){return"margin_percent"in t?`margin ${S(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${S(t.markup_percent,2)} %`:"price as set"}var Yp=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function eu(t,e,{way:n,by:o,ask:i,with_tax:r},l,d=u){let c=i===r,p=ko(t),m=b=>Yp(n,b),_=(b,y)=>l?s`${y} ${_o(b)}`:y;return s`<tbody>
    ${vs(s`<span class="way">${n}</span>, ${cD(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Zp),"ask")}
    ${e?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>Pw(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>Pw(b.markup_percent)))}
  </tbody>`}var Zp=({ask:t,is_below_cost:e})=>e?s`<span class="below">${t}<small>below cost</small></span>`:t;function nu(t,e){let n=o=>t.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Ts(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Rs=t=>t===1?"once":`${t} times`;function Ow({times:t,currency:e,has_tax:n},o){let i=ko(t);return s`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(r=>s`<th scope="col"><b>${Rs(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        ${pD(t)}
        <tbody>
          ${vs(ou(t)?"All made anew it would cost":"It costs",t)}
          ${t[0].lines.map((r,l)=>fD(t,l))} ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${tu(t,r=>`made ${Rs(r.times)}`)}
        </tbody>
        ${Ts(t).map((r,l)=>eu(t,n,r,l===0,_D(t,r.way)))}
      </table>
    </div>`}var ou=t=>t.some(({ready:e})=>e.lines.some(({text:n})=>n!==""));function pD(t){if(!ou(t))return u;let e=ko(t),n=o=>({ready:i})=>i.lines.reduce((r,l)=>r+l[o],0);return s`<tbody>
    ${e("delivered",n("delivered"))} ${e("made already",n("taken"))} ${e("to make",n("to_make"))}
    ${e("What is left to make costs",({rest:o})=>o?o.cost:"nothing")}
    ${e("Materials of what is made already did cost",({ready:o})=>mD(o))}
  </tbody>`}function mD({cost:t,costs_unknown:e}){if(!t)return"nothing is taken";if(!t.materials.length)return"not known";let n=t.materials.map(({amount:o,currency:i})=>`${o} ${i}`).join(" + ");return t.unpriced.length||e.length?`more than ${n}`:n}var Xp=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,fD=(t,e)=>ks(t,Xp(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>s`${hD(n[e])} ${n[e].parts.map(({part:o})=>gD(n[e],o))}`),hD=t=>xs(`A piece of ${Xp(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Zl(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>s`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),gD=(t,e)=>Xl(`${e} of all of them, ${Xp(t)}`,t,e),_D=(t,e)=>t[0].lines.map(({run:n},o)=>ko(t)(`${n??""}, a piece`,({lines:i})=>Yp(e,Zp)(i[o]))),Fw=({times:t})=>nu(t,e=>`the order loses money, made ${e.map(n=>Rs(n.times)).join(", ")}.`);function Mw({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${ge}</strong> ${o}</p>`)}
  </div>`:u}function Lw({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!e.length?u:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${Wt(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${x(H(a.units,r.make_g))} in
            ${V(r.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${e.map(r=>s`<li>${r}</li>`)}
  </ul>`}function $D(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===a.printing.way)?.way}function iu({file:t,question:e,prices:n,is_old:o}){let i=vn(t),r=$D(n),l={quote:n.length>1&&r?{...e,way:r}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?s`<p class="question">The price that is offered</p>
            ${ct("The price that is offered",r,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?yn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):u}
      ${yn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${a.files?.studios.length?s`${yn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Ot("Shopping list, table",jt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?r?u:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${wn()}</p>
  </section>`}var tm=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await bD(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";Te(this.#e?s`<img src=${this.#e} alt=${this.#t} />`:s`<p class="hint">${this.#n?e:u}</p>`,this)}};async function bD(t){try{return[URL.createObjectURL(await rn({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof w))throw e;return["",e.message]}}customElements.define("cost-picture",tm);function Bw(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,r]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Ut:jl()}
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
          ${wD(t).map(({sell:d,each:c})=>s`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function wD({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var Cw=({sell:t})=>`${t} to sell`;function Ww({numbers:t,currency:e,has_tax:n},o){let i=ko(t);return s`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${t.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):u}
        </tbody>
        <tbody>
          ${vs("A piece costs",t)} ${yD(t).map(r=>vD(t,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${tu(t,Cw)}
        </tbody>
        ${Ts(t).map((r,l)=>eu(t,n,r,l===0))}
      </table>
    </div>`}var yD=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],vD=(t,e)=>ks(t,e,n=>Zl(n,e),n=>Xl(`${e} of the whole run, ${Cw(n)}`,n,e)),Iw=({numbers:t})=>nu(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function Ew(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${tn()?xD():kD()}
  </section>`}var kD=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>em()}>To the prices paid</button>`;function em(t,e="lane-studio"){dt("set-up studio"),t&&Vt("studio",t),Yt("set-up"),requestAnimationFrame(()=>I(B(e)))}function xD(){let{quote:t,complaint:e,is_old:n}=El();return s`${t?s`${TD(t)} ${Iw(t)}`:u}
    <div class="row">${AD(e)}</div>
    ${nm()?u:om(t?.currency,e)} ${e?SD(e):u}
    ${t?FD(t,n):e?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function TD({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${e.map(o=>s`<p class="danger"><strong>${ge}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var RD=["sell","margin","markup","price"],Zi=(t,e)=>t?.file===""&&t.field===e?L(t):void 0;function SD(t){return RD.some(e=>Zi(t,e))?u:s`<p class="alarm" role="status">${Un(t.field)}${L(t)}</p>
    ${t.is_fault?s`<button type="button" @click=${Wp}>Ask again</button>`:t.field.startsWith("/")?s`<button type="button" @click=${Fp}>Go to the field</button>`:u}
    ${Pp(t)}`}function ru({id:t,label:e,unit:n,value:o,hint:i,complaint:r,take:l,left:d}){return s`<div class="field ${r?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${P(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${t}-said`:u}
    />
    ${$t(t,r,i)}
  </div>`}function AD(t){let{numbers:e}=a.quote_wish;return ru({id:"quote-numbers",label:"Numbers of pieces",value:e??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Zi(t,"sell"),take:n=>Rr({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Rr({numbers:void 0})}})}var DD=()=>lt()?em("money asking",`${Y("studio","/asking")}-name`):em(),nm=()=>Object.keys(g("studio","/asking")??{}).length>0,PD=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],OD={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function om(t,e){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=OD[n??"price"],l=d=>r&&Dt(d)?`${d.trim()} ${r}`:d;return s`${ct("A price, for this moment",n,PD,d=>{Rr({by:d,figure:""}),I(B("quote-figure"))})}
    ${n?s`<div class="row">
            ${ru({id:"quote-figure",label:i,unit:r||t,value:r?o.replace(/ %$/,""):o,complaint:Zi(e,n),take:d=>Rr({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${DD}>Keep my ways of selling</button>`}function FD(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${t.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${Ww(t,e)}
  ${MD(t,e)} ${Bw(t,e)}
  ${iu({file:a.run.file,question:jl(),prices:t.numbers[0].prices,is_old:e})}`}function MD({numbers:t,steps:e,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let d=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${e.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(c=>s`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function Nw({times:t}){let e=t.flatMap(({times:i,ready:r})=>r.lines.filter(({text:l})=>l).map(({text:l})=>t.length===1?l:`${Rs(i)}: ${l}`)),[{ready:n}]=t,o=[...new Set(n.notes.map(({text:i})=>i))];return!e.length&&!o.length?u:s`<div class="ready" role="group" aria-label="Pieces that are made already">
    ${e.map(i=>s`<p><b>${i}</b></p>`)} ${o.map(i=>s`<p>${i}</p>`)}
    ${n.lines.map((i,r)=>BD(i,r))}
    ${ou(t)?s`<p class="hint">${LD}</p>`:u}
  </div>`}var LD="What a piece costs and is asked for goes by all pieces made anew; to lay out is what the rest takes, and what packing all that is not delivered takes.",BD=({batches:t,made_otherwise:e},n)=>e.map(({batch:o,pieces:i,files:r})=>s`<p>
        <button type="button" @click=${()=>uw(n,[...t.map(l=>l.batch),o])}>
          Take the ${i} of batch ${o} all the same
        </button>
        <small>Made by another ${r.join(", ")}.</small>
      </p>`);function jw(){let{order:t}=a;if(!t)return s`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return s`${gn(e)} ${_n(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${N(String(n))}`:u}</p>
    ${dw()} ${Fn(e.now)?Yl("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${Fn(e.now)?WD():CD()}
    </section>
    ${Fn(e.now)?qD():u} ${HD()}`}var CD=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function WD(){let{quote:t,complaint:e,is_old:n}=aw();return s`${t?s`${Mw(t)} ${Fw(t)}`:u}
    <div class="row">${ID(e)}</div>
    ${nm()?u:om(t?.currency,e)} ${e?ND(e):u}
    ${t?s`${Nw(t)} ${jD(t)} ${Lw(t)} ${Ow(t,n)}
          ${iu({file:Mt().open.file,question:jp(Mt()),prices:t.times[0].prices,is_old:n})}`:e?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var ID=t=>ru({id:"order-times",label:"How often it is made",value:Mt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Zi(t,"times"),take:e=>v(Mt(),{times:e})}),ED=["times","margin","markup","price"];function ND(t){if(ED.some(n=>Zi(t,n)))return u;let e=Me("order");return s`<p class="alarm" role="status">
      ${e?s`${Un(t.field)}${L(t)}`:t.line}
    </p>
    ${t.is_fault?s`<button type="button" @click=${Np}>Ask again</button>`:e&&mn()?s`<button type="button" @click=${()=>ee(mn())}>Go to the field</button>`:u}`}function jD({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function HD(){let{file:t,now:e}=Mt().open;if(t.includes("/"))return u;let n=e.id?String(e.id):`file:${t}`;return s`<section class="out" aria-labelledby="got-title">
    <h2 id="got-title">What it got</h2>
    <div class="choice">
      <button type="button" @click=${()=>Xt(`order ${n}`,t)}>Its batches and their lots</button>
    </div>
  </section>`}function qD(){let{file:t,now:e}=Mt().open,n={plan:{file:t,order:e},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Kl()}
    <div class="choice">
      ${yn({words:"Bench sheets",kind:"sheet",file:`${vn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${wn()}</p>
  </section>`}var UD=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function Hw(){let t=[...a.files?.orders??[]].sort(UD),e=a.new_order.trim(),n=()=>{pt(async()=>{await C_(e),f({new_order:""})})};return s`${Be("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Xe(t,zD):s`<p class="aside">
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
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${Ce("order")}`}function zD(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":V(e,"piece"),n?`due ${N(n)}`:"",o?`changed ${N(o)}`:""].filter(Boolean);return $n({kind:Wo,one:t,facts:i,open:()=>Jr(t.file)})}function Uw(){if(a.view==="order"&&a.order)return qw(a.order.open);let t=so();if(t)return qw(t);let e=KD();if(e)return e;let{run:n}=a,o=a.formula_of==="apart"||!(G(n)||n.theirs||n.failed);return a.view==="formula"&&o?JD():n.theirs?sm(n):n.failed?au(`Not saved: ${n.failed}`):G(n)?rm:su(n.shipped?im:`Saved in ${n.file}`)}function qw(t){return t.theirs?sm(t):t.failed?au(`Not saved: ${t.failed}`):G(t)?rm:su(t.shipped?im:`Saved in ${t.file}`)}var im="Built-in: your first change is saved as a copy.",rm={words:"Saving ...",is_kept:!1},su=t=>({words:t,is_kept:!0}),au=t=>({words:t,is_kept:!1,is_failed:!0}),sm=t=>au(Ho(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function KD(){let t=a.formulas.apart?"apart":"run",e=On(t);if(e)return sm(e);if((t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&G(o)))return a.complaint?.file===""?au(`Not saved: ${a.complaint.problem}`):rm}function JD(){let t=a.formulas[a.formula_of];return su(t?t.shipped?im:`Saved in ${t.file}`:"")}function uu(){let{view:t,mould:e,order:n,past:o,future:i}=a;if(t==="shelf"||t==="trail")return{};if(t==="moulds"&&e)return lu(e,F_,M_);let r=de(t)?so():void 0;return r?lu({past:zw(r,o),future:zw(r,i)},Lr,Od):de(t)?{undo:Cr()&&Kc,redo:Id()&&M$}:t==="order"&&n?lu(n,W_,I_):lu({past:o,future:i},Lr,Od)}function zw(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var lu=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var Kw={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},VD={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},QD="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",GD="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",am=t=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${t} />`}</svg>`;function Qw(){let t=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:s`<nav class="rail-lists" aria-label="Lists">
                ${Ff.map(e=>Gw(e,Kw[e],s`${Kw[e]}`))}
              </nav>
              ${ZD()}`}
    </div>
    ${t?u:XD()}
  </header>`}var YD={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},du=["metric","both","us"],Jw={metric:"g",both:"both",us:"oz"},Vw=t=>()=>{f({units:t}),localStorage.setItem("units",t)};function ZD(){let t=du[(du.indexOf(a.units)+1)%du.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${du.map(e=>s`<button type="button" aria-pressed=${a.units===e?"true":"false"} @click=${Vw(e)}>
            ${YD[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${Vw(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Jw[a.units]}<span
        class="unseen"
        >. Change to ${Jw[t]}</span
      >
    </button>`}function XD(){let{undo:t,redo:e}=uu();return s`<div class="bar">
    ${a.run.file?tP():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${am(QD)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${am(GD)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?rP():u}
  </div>`}function tP(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Mf.map(eP)}</div>
  </nav>`}function eP(t){let[e,n]=VD[t],o=nP(t);return Gw(t,o?`${e}, ${o.words}`:e,s`${am(n)}<span>${e}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function nP(t){if(t==="watch"&&H_())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="record"&&oP())return{sign:"\u2717",words:"refused"};if(t==="set-up"&&iP())return{sign:"\u25CB",words:"missing"}}var oP=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:t})=>Ca(t.id)>0),iP=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Gw(t,e,n){let o=a.view===t||a.view==="order"&&t==="orders"||a.view==="trail"&&t==="shelf"||a.view==="learned"&&t==="record";return s`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{Yt(t)}}
  >
    ${n}
  </button>`}function rP(){let{words:t,is_kept:e,is_failed:n}=Uw();return s`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var Yw=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${Yl("run")}`;var lm=t=>Tn("GET",`/api/learned?run=${encodeURIComponent(t)}`),Zw=t=>ke("/api/learned/take",t);var sP=1e3,ty=()=>[a.run.file,a.plan,a.record.version],aP=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]),Xi=t=>f({learned:{...a.learned,...t}});function ey(){uo();let{learned:t}=a,e=a.record.run===a.run.file&&a.record.version!==void 0&&!a.is_old,n=aP(t.of,ty());return e&&!n&&!um&&lP(),{...t.run===a.run.file?t:{},is_old:!e||!n}}var cu=()=>Xi({of:void 0}),um=!1;async function lP(){um=!0;try{await uP()}finally{um=!1,f({})}}async function uP(){let t=ty(),e=a.run.file;try{let n=await lm(e);e===a.run.file&&Xi({of:t,run:e,kept:n,failed:void 0})}catch(n){if(!(n instanceof w))throw n;if(e!==a.run.file)return;Xi({of:t,run:e,failed:L(n.complaint)}),n.may_pass&&window.setTimeout(cu,sP)}}var dP=()=>G(a.run)||[...dn()].some(G);async function cP(t,e){if(!dP())return[t,e];await Se(),await fe();let n=await lm(a.run.file);return[n.learned?.figures.find(({name:o})=>o===t.name)??t,n]}var ny=t=>iy(t,"take"),oy=t=>iy(t,"undo");async function iy(t,e){let{kept:n,doing:o}=a.learned;if(o!==void 0||!n||!t.in_file)return;Xi({doing:t.name,said:void 0});let i=a.run.file;try{let[r,l]=await cP(t,n),{file:d}=t.in_file,c=await Zw({run:i,file:d,version:l.versions[d]??"",[e]:r.name});pP(c),Xw(t,`${d} was changed.`)}catch(r){if(!(r instanceof w))throw r;Xw(t,`Nothing was written: ${L(r.complaint)}.`,!0),cu()}finally{Xi({doing:void 0})}}function Xw({name:t},e,n=!1){Xi({said:{name:t,words:e,is_refused:n}}),D(e)}function pP(t){for(let e of[a.run,...dn()])e.file===t.file&&Ch(e,t);st(),Ha()}function ui(t,e){let{units:n}=a;return t==="mm"?`${e>0?"+":""}${x(_t(n,e))}`:t==="ml"?x(vt(n,e)):t==="g"?x(H(n,e)):t==="g/ml"?`${Kt(e,3)} g/ml`:t==="%"?`${S(e,1)} %`:t==="min"?e<5?`${Kt(e*60,0)} s`:`${Kt(e,0)} min`:S(e,3)}var pu=t=>t===1?"1 batch":`${t} batches`,ry=t=>t.charAt(0).toUpperCase()+t.slice(1),sy=({figures:t,batches:e})=>t.length?`From ${pu(e)} recorded beside this run. Only a batch's own notes tell a figure.`:`${pu(e)} recorded beside this run: a figure is shown once three of them tell it.`;function ay(t,e){let n=`learned-${t.name.replaceAll(/\W/g,"-")}`,{unit:o,value:i,low:r,high:l,values:d}=t;return s`<article class="learned-figure" data-name=${t.name} aria-labelledby=${n}>
    <h3 id=${n}>${ry(t.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${ui(o,i)}</b></p>
      <p>
        between <span class="low">${ui(o,r)}</span> and <span class="high">${ui(o,l)}</span>, from
        <span class="count">${pu(d.length)}</span>
      </p>
      <p>
        ${t.used_now===null?mP(t):s`The plan uses <b class="used">${ui(o,t.used_now)}</b>.`}
      </p>
    </div>
    ${fP(t)} ${hP(t)} ${_P(t)} ${$P(t,n,e)} ${wP(t)}
    ${yP(t)}
  </article>`}var mP=({unit:t})=>t==="min"?"The studio says nothing of it yet.":"The plan uses none.";function fP({values:t,low:e,high:n,value:o,used_now:i}){let r=[...t.map(m=>m.value),e,n,...i===null?[]:[i]],[l,d]=[Math.min(...r),Math.max(...r)],c=d-l||1,p=m=>6+288*(m-l)/c;return s`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${R`<rect class="range" x=${p(e)} y="6" width=${Math.max(1,p(n)-p(e))} height="18" />
      <path class="told" d="M${p(o)} 3v24" />
      ${i===null?u:R`<path class="used" d="M${p(i)} 1v28" />`}
      ${t.map(m=>R`<circle cx=${p(m.value)} cy="15" r="3" />`)}`}
  </svg>`}function hP({standing:t,in_file:e}){return e?.is_taken?u:t==="stands nowhere"||!e?s`<p class="aside">For you to know: no file has a place for it.</p>`:t==="too few"?s`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`:t==="as planned"?s`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`:e.refused?s`<p class="minded">
        <strong>Cannot be taken:</strong> it ${e.refused.problem}. ${ry(e.refused.remedy)}.
      </p>`:u}var gP=({of:t,unit:e,now:n,then:o})=>s`<li>
    ${t}: ${ui(e,n)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${ui(e,o)}</b>
  </li>`;function _P({with_it:t,no_plan_with_it:e,in_file:n}){return n?.is_taken?u:e!==void 0?s`<p class="minded"><strong>With it there would be no plan:</strong> ${e}.</p>`:t.length?s`<p>With it:</p>
        <ul class="learned-effects">
          ${t.map(gP)}
        </ul>`:u}function $P(t,e,n){let{in_file:o,standing:i}=t;if(!o)return u;let{file:r,says:l,would_say:d,is_taken:c,taken:p,refused:m}=o,_=!c&&!m&&i==="suggested",b=n||a.learned.doing!==void 0;return s`${p?bP(p,o):u}
    ${_?s`<p class="in-file">
            In ${r}: ${l??"nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${d}</b>
          </p>`:u}
    <div class="row">
      ${_?s`<button
              type="button"
              class="strong"
              ?disabled=${b}
              aria-describedby=${e}
              @click=${()=>{ny(t)}}
            >
              Take it
            </button>`:u}
      ${p?s`<button
              type="button"
              ?disabled=${b}
              aria-describedby=${e}
              @click=${()=>{oy(t)}}
            >
              Take back
            </button>`:u}
    </div>`}var bP=({on:t,batches:e,before:n,steps:o},{file:i,says:r})=>s`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${N(t)} from ${pu(e)}: <b>${r}</b> in
    ${i}, and the plan uses it. Before: ${n??"nothing"}${o>1?", which was taken as well":""}.
  </p>`;function wP({name:t}){let{said:e}=a.learned;return e?.name!==t?u:s`<p class=${e.is_refused?"complaint":"hint"} role="status">${e.words}</p>`}var yP=({values:t,unit:e,name:n})=>s`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${n}>
      ${t.map(o=>s`<li>${o.batch}, ${N(o.date)}: <b>${ui(e,o.value)}</b></li>`)}
    </ul>
  </details>`;var vP=({years:t})=>t.map(String).reverse();function ly(t){let e=a.run.file,n=vn(e),o=i=>({kind:"picture",learned:{file:e,...i}});return s`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${Ot("This run",zl(o({})))}
      ${Ot("This run, SVG",jt(`${n} plan against actual.svg`,o({})))}
      ${vP(t).map(i=>s`${Ot(`The year ${i}`,zl(o({year:i})))}
          ${Ot(`The year ${i}, SVG`,jt(`${n} ${i}.svg`,o({year:i})))}`)}
    </div>
    <p role="status">${wn()}</p>
  </section>`}function uy(){let{kept:t,failed:e,is_old:n}=ey();return s`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    <p><button type="button" @click=${()=>{Yt("record")}}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${e===void 0?u:s`${kP(e)}`}
    ${t?xP(t.learned,n):e===void 0?s`<p class="hint" role="status">Reading ...</p>`:u}
  </section>`}var kP=t=>s`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${t}.</p>
    <button type="button" @click=${cu}>Ask again</button>`;function xP(t,e){return t?.batches?s`<div class=${e?"old":""}>
    <p class="hint">${sy(t)}</p>
    ${t.figures.map(n=>ay(n,e))} ${TP(t.figures)} ${RP(t)}
    ${SP(t)} ${AP(t)} ${ly(t)}
  </div>`:s`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`}function TP(t){let e=t.some(({level_percent:o})=>o!==null),n=t.some(({level_percent:o})=>o===null);return t.length?s`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${e?"From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. ":u}
    ${n?"Below six, it is from the least to the greatest.":u}
  </p>`:u}var RP=({left_out:t})=>t?s`<p class="aside">
        ${t===1?"1 batch was":`${t} batches were`} of another formula or mould under the same name, and
        ${t===1?"is":"are"} not counted where that matters.
      </p>`:u,SP=t=>t.untold.length?s`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${t.untold.map(({text:e})=>s`<li>${e}</li>`)}
        </ul>`:u,AP=t=>t.contradictions.length?s`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${t.contradictions.map(({text:e})=>s`<li>${e}</li>`)}
        </ul>`:u;function cy(t){if(!T$(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=Qt(e)?`${V(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${dy(t,"pour","The base, whole run")}
      ${e.pipe?dy(t,"pipe","The topping, whole run"):u} ${DP(t)}
    </div>
  </section>`}function dy(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,r=[...U$(i),...fl(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:d})=>mu(`${e}.ingredients.${d}.g`,l.name,ii(a.units,l)))}
    ${mu(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",H(a.units,i.make_g))}
  </div>`}var mu=(t,e,n)=>W({key:`needs.${t}`,label:e,shown:n,of:t});function DP(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((r,l)=>r.colours.map((d,c)=>({layer:r,one:d,i:l,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=r=>X(a.units,at(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:d,j:c})=>mu(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${r.name}`,ii(a.units,l)))}
    ${o.map((r,l)=>mu(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function py(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=t.piece,d=r?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${W({key:"piece.fresh",label:c("Fresh"),shown:H(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:W({key:"piece.cured",label:c("Cured"),shown:H(a.units,o),of:"piece.cured_g"})}
      ${r?W({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:H(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:W({key:"piece.label",label:"Net weight for the label",shown:H(a.units,i,0),of:"piece.label_g"})}
      ${l?W({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?s`${W({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${dm(t)}
    </section>
    ${Ew()} ${cy(qi(t))}`}function dm(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var PP={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Ss({kind:t,unit:e}){let n=PP[t]??[];return e&&n.includes(e)?[e,...n.filter(o=>o!==e)]:n}var my="degrees",OP=()=>localStorage.getItem(my)??void 0,fy=t=>localStorage.setItem(my,t);function cm(t){return t.kind!=="temperature"?Ss(t)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":OP()}function hy(t,e){let n=t.kind==="length"&&e?e.startsWith("-")?"below":"above":void 0,o=n?e.replace(/^[+-]\s*/,""):e,i=Oe(o);return Ss(t).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function gy({number:t,unit:e,side:n}){let o=t.trim();if(!o)return"";let i=e&&Dt(o)?`${o} ${e}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function fu({kind:t},{number:e,unit:n,side:o}){return t==="temperature"&&!n&&Dt(e)?"Is that in \xB0C or in \xB0F?":t==="length"&&o===void 0&&/[1-9]/.test(e)&&!/^\s*[+-]/.test(e)?"Above the line or below it?":void 0}var en,FP=(t,e)=>`note-${t}-${e.replaceAll(/[^\w]/g,"-")}`;function hu(t,e){let n=cn(t.begun.id,e.key),o=FP(t.begun.id,e.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${e.key}>
    ${e.kind==="choice"?s`<p class="blank-words" id="${o}-label">${e.words}</p>`:s`<label class="blank-words" for=${o}>${e.words}</label>`}
    <div class="blank-value">${MP(t,e,o,n)}</div>
    <p class="blank-beside">
      ${e.planned?s`<span class="planned">planned <b>${e.planned}</b></span>`:u}
      ${EP(t,e,n)}
    </p>
    ${qP(t,e,o,n)}
  </div>`}function MP(t,e,n,o){if(e.kind==="choice")return IP(t,e,n,o);let i=_y(t,e,o),r=Ss(e).length>0||e.kind==="count",l=c=>pm(t,e,{...i,number:c.target.value}),d=c=>{ti(c),LP(t,e)};return s`<input
      id=${n}
      type=${e.kind==="date"?"date":"text"}
      inputmode=${e.kind==="count"?"numeric":r?"decimal":u}
      class=${r?"number":""}
      autocomplete="off"
      .value=${P(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||fu(e,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&BP(c)}
    />
    ${CP(t,e,i)} ${WP(t,e,i)}`}function _y({begun:t},e,n){if(en?.batch===t.id&&en.key===e.key)return en.typed;if(n?.lacks)return{number:n.text,unit:e.kind==="temperature"?void 0:cm(e)};let o=hy(e,n?n.value:e.noted??"");return{...o,unit:o.unit??cm(e)}}function pm(t,e,n,o=!1){en={batch:t.begun.id,key:e.key,typed:n},$y(t,e,n,o),Q()}function $y(t,e,n,o){let i=fu(e,n)!==void 0;tc(t,{key:e.key,text:n.number,value:gy(n),is_left:o,lacks:i})}function LP(t,e){if(en?.batch!==t.begun.id||en.key!==e.key)return;let{typed:n}=en;en=void 0,$y(t,e,n,!0),Q()}function BP({target:t}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(t)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function CP(t,e,n){let o=Ss(e);if(e.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:u;let i=r=>{fy(r),pm(t,e,{...n,unit:r},!0)};return by(`Degrees: ${e.words}`,o,n.unit,i)}function WP(t,e,n){if(e.kind!=="length")return u;let o=i=>pm(t,e,{...n,side:i},!0);return by(`Side: ${e.words}`,["above","below"],n.side,o)}var by=(t,e,n,o)=>s`<div class="choice" role="group" aria-label=${t}>
    ${e.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function IP(t,e,n,o){let i=o?o.value:e.noted,r=l=>{co(t,e.key,l),D(l?`${e.words}: ${l}`:`${e.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(e.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:u}
  </div>`}function EP({begun:t},e,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=en?.batch===t.id&&en.key===e.key;return e.noted!==void 0&&!(o&&!en.typed.number.trim())?s`<span class="stands kept">✓ noted ${HP(e.noted_at)}</span>`:u}var NP=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),jP=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function HP(t){if(!t)return"";let e=new Date(t);return(e.toDateString()===new Date().toDateString()?NP:jP).format(e)}function qP(t,e,n,o){if(o?.refused)return mm(o,`${n}-said`);let i=fu(e,_y(t,e,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:u}function mm(t,e){let{words:n,is_asked:o,noted:i,is_lye:r}=t.refused,l=t.value||"nothing",d=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class=${r?"alarm":"complaint"} id=${e} data-lye=${r?"true":u}>
      ${r?s`<strong aria-hidden="true">⚠</strong> `:u}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||d?s`<div class="row">
            ${d?s`<button type="button" @click=${()=>Zg(t)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>Yg(t)}>
              ${d?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:u}
  </div>`}var wy="record weights";function yy(t){let{rows:e=[]}=t;if(!e.length)return u;let n=a.open.has(wy),o=e.filter(i=>n||i.noted!==void 0||cn(t.begun.id,i.key));return s`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>s`${UP(i,o)} ${hu(t,zP(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>Et("open",wy)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var UP=(t,e)=>e.find(({of:n})=>n===t.of)===t?s`<h3>${t.of}</h3>`:u,zP=t=>({...t,kind:"mass",when:"base_mixed"});var As=t=>{let{beginning:e}=a.record;e&&zt({beginning:{...e,...t}})},vy=t=>zt({beginning:{batch:t,code:"",answers:{}},told:void 0}),fm=()=>zt({beginning:void 0}),ky=t=>As({code:t,complaint:void 0});async function hm(t){let{beginning:e}=a.record;if(!(!e||e.is_asking)){As({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Zn(a.run),await fe(),await KP(e,t)}catch(n){if(!(n instanceof w))throw n;As({complaint:n.complaint}),D(`Not begun: ${n.complaint.problem}`)}finally{As({is_asking:!1})}}}async function KP({batch:t,code:e,answers:n},o){let i=a.run.file,r=Go(t)!==void 0,l=await zg({run:i,batch:t,seen:o,code:e.trim()||void 0,again:r,...n}),[d]=l.record.batches;zt({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),Fa(l,i),D(`The record is begun: ${d.begun.code}`),Wa(d,zo(t)),await Mn()}async function xy(t,e){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=t[r];return l===void 0?o[r]:[...o[r]??[],l]};As({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await hm(e)}var gm=(t,e)=>zt({code:{batch:t,text:e}}),gu=()=>zt({code:void 0});async function Ty(){let{code:t,run:e}=a.record;if(!t?.text.trim())return gu();try{let n=crypto.randomUUID();Fa(await Da({run:e,batch:t.batch,act:n,code:t.text.trim()}),e),gu()}catch(n){if(!(n instanceof w))throw n;zt({code:{...t,complaint:L(n.complaint)}})}}var Ds="batch-code";function _u({begun:t}){let{code:e}=a.record,n=e?.batch===t.id,o=()=>{gm(t.id,t.code),I(B(Ds))};return s`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${t.code}</b></p>
    ${n?s`<div class="row">
            <div class="field ${e.complaint?"wants":""}">
              <label for=${Ds}>Another code</label>
              <input
                id=${Ds}
                autocomplete="off"
                .value=${P(e.text)}
                aria-describedby=${e.complaint?`${Ds}-said`:u}
                @input=${i=>gm(t.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Ty()}}>Use this code</button>
            <button type="button" @click=${gu}>Leave it</button>
            ${e.complaint?s`<p class="complaint" id="${Ds}-said">${e.complaint}</p>`:u}
          </div>`:s`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var Ps;function JP(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var $m=t=>`cured.${t}`;function Ry(t,e){let{id:n}=t.begun,o=Ps?.batch===n?Ps:{batch:n,day:JP(),pieces:"",weight:""},i=t.cured??[],r=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${e.key}>
    <p class="blank-words">
      Weighed while it cures ${e.planned?s`<small>planned, cured: ${e.planned}</small>`:u}
    </p>
    ${QP(n).map(GP)}
    ${i.length?s`<ul class="weighings">
            ${i.map(d=>ZP(t,d))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${_m("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${_m("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${_m(`Weight together, ${e.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>VP(t,e,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${N(r.on)} already: ${La(r)}.</p>`:u}
  </div>`}var _m=(t,e,n,o,i)=>s`<div class="field short">
    <label for=${e}>${t}</label>
    <input
      id=${e}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${P(o)}
      @input=${r=>{Ps=i(r.target.value),Q()}}
    />
  </div>`;function VP(t,{unit:e="g"},n){let o=Dt(n.weight)?`${n.weight.trim()} ${e}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;co(t,$m(n.day),r),D(`Weighing of ${N(n.day)}: ${r}`),Ps=void 0,Q(),I(B("cure-pieces"))}var QP=t=>a.record.acts.filter(e=>e.batch===t&&e.key.startsWith("cured.")),GP=t=>{let e=N(t.key.slice(6));return t.refused?s`<p><b>${e}</b> <span class="stands not">✗ not noted</span></p>
        ${mm(t,`said-${t.id}`)}
        <div class="row"><button type="button" @click=${()=>YP(t)}>Correct it</button></div>`:s`<p><b>${e}</b>: ${t.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function YP({batch:t,key:e,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Ps={batch:t,day:e.slice(6),pieces:o,weight:i},Q(),I(B("cure-pieces"))}function ZP(t,e){let n=cn(t.begun.id,$m(e.on));return s`<li>
    <span><b>${N(e.on)}</b>: ${La(e)} <span class="stands kept">✓ noted</span></span>
    ${n?u:s`<button
            type="button"
            aria-label="Take back the weighing of ${N(e.on)}"
            @click=${()=>co(t,$m(e.on),"")}
          >
            Take back
          </button>`}
  </li>`}function Sy(){let{batches:t}=a.record;if(t.length<2)return u;let e=Ma();return s`<ul class="makings" aria-label="Batches of this run">
    ${[...t].reverse().map(n=>XP(n,n.begun.id===e?.begun.id))}
  </ul>`}function XP(t,e){let{id:n,code:o}=t.begun,i=Ca(n);return s`<li>
    <button type="button" aria-pressed=${e?"true":"false"} @click=${()=>Qo(n)}>
      <b>${o}</b> <span>${bm(t)}</span>
      <small>${Os(t)}; ${V(t.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function bm({number:t,begun:e}){let{of:n=1}=a.record;return`${n>1||t>1?`batch ${t} of ${Math.max(n,t)}, `:""}${V(e.pieces,"piece")}, begun ${N(e.begun_on)}`}var Os=({for_sale:t,not_for_sale_because:e=""})=>t?"For sale":`Not for sale: ${xt(e)}`;function Ay(t,e){let{number:n,begun:o}=t,i=a.bench.run===a.record.run?to(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?zo(n):"";return!r||Ba(t,e.key)||cn(o.id,e.key)?u:s`<p class="read-at-weights">
    <button type="button" @click=${()=>co(t,e.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function Dy({to_weights:t,to_learned:e}){uo();let n=Ma();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${a.record.batches.length?s`<p><button type="button" @click=${e}>What your batches say</button></p>`:u}
    ${tO()} ${Sy()} ${n?nO(n):eO(t)}
  </section>`}function tO(){let{failed:t,unsent:e,acts:n}=a.record,o=e!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${t!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${t}.</p>`:u}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${e}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function eO(t){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${t}>To the weights</button></p>`}function nO(t){let{blanks:e}=t;return s`<div class="record-head">
      ${_u(t)}
      <p>${bm(t)}</p>
      <p class="sale ${t.for_sale?"is":""}">
        <span aria-hidden="true">${t.for_sale?"\u2713":"\u2717"}</span> <b>${Os(t)}</b>
      </p>
      ${oO()?s`<button type="button" @click=${()=>Xt(`batch ${t.begun.code}`)}>What is in it</button>`:u}
    </div>
    ${(t.as_weighed??[]).map(({severity:n,text:o})=>s`<p class=${n==="danger"?"alarm":"aside"}>
          ${n==="danger"?s`<strong aria-hidden="true">⚠</strong> `:u}${o}
        </p>`)}
    ${e?aO(t,e):s`<p class="hint">Reading ...</p>`}`}var oO=()=>!a.record.run.includes("/"),iO={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},rO="unmoulded_on",wm="Cure and test";function sO(t){let e=[];for(let n of t){let o=e.at(-1),r=n.key===rO||o?.title===wm?wm:iO[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):e.push({title:r,of:l,blanks:[n]})}return e}function aO(t,e){let n=sO(e);return s`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>s`<button type="button" @click=${()=>lO(i)}>${Py(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>uO(t,o,i))} ${yy(t)}`}var Py=({title:t,of:e})=>e?`${t}: ${e}`:t,ym=t=>`record-part-${t}`;function lO(t){let e=document.getElementById(ym(t));e?.focus({preventScroll:!0}),e?.scrollIntoView({block:"start"})}var uO=(t,e,n)=>s`<section class="record-part" aria-labelledby=${ym(n)}>
    <h2 id=${ym(n)} tabindex="-1">${Py(e)}</h2>
    ${e.title===wm?dO(t):u} ${e.blanks.map(o=>cO(t,o))}
  </section>`,dO=({for_sale:t})=>t?u:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,cO=(t,e)=>e.kind==="weighing"?Ry(t,e):s`${hu(t,e)} ${ec(e)?Ay(t,e):u}`;var[Fy,km]=[440,270],[Fs,vm,$u,tr]=[64,Fy-10,10,km-52],pO=6,mO=8;function Oy(t){let e=t/pO,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,r)=>r*o)}var er=t=>S(t,1);function My(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>er(Fs+(vm-Fs)*d/n),r=d=>er(tr-(tr-$u)*d/o),l=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Fy} ${km}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${Oy(n).map(d=>R`<path class="grid" d="M${i(d)} ${$u}V${tr}" />
            <text x=${i(d)} y=${tr+20} text-anchor="middle">${er(d)}</text>`)}
      ${Oy(o).map(d=>R`<path class="grid" d="M${Fs} ${r(d)}H${vm}" />
            <text x=${Fs-8} y=${r(d)} text-anchor="end" dominant-baseline="middle">${er(d)}</text>`)}
      ${R`<text x=${(Fs+vm)/2} y=${km-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${($u+tr)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${$u}V${tr}" />`}
    </svg>
    ${fO(t)}`}function fO(t){let e=Math.max(1,Math.round(t.length/mO)),n=t.filter((o,i)=>(i+1)%e===0);return s`<details>
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
              <th scope="row">${er(o)}</th>
              <td>${er(i)}</td>
              <td>${S(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var bu=Math.PI/8,hO=500,xm=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},hO))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await rn(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#e?.show(Ai(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;Te(s`${e} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-bu)}>Turn left</button>
        <button type="button" @click=${e(bu)}>Turn right</button>
        <button type="button" @click=${n(bu)}>From above</button>
        <button type="button" @click=${n(-bu)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",xm);function Ly(t){let{measured:e}=a;if(!e)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${W({key:"mould.brimful",label:"To the brim",note:`${x(_t(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:vt(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    ${Rl(fb(e.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${My(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${gO(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function gO(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var _O=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function By(t){let{batch:e}=a.printing;return Qt(t)&&e<=t.pieces.batches?e:0}function $O(t){if(!Qt(t))return u;let e=By(t),n=i=>li({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${P(i===e)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${_O(t).map(({number:i,one:r})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Ze(t,r)}`))}
      </select>
    </div>
  </div>`}function Cy(t){let{paper:e}=a.printing,n=vn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},l=By(t),d={plan:o,paper:e,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Kl()} ${$O(t)}
    <div class="choice">
      ${yn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?Ot("Label draft",jt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Ot("Drawing of the pour, true size",jt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Ot("Drawing of the piece",jt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Ot("Whole piece, GLB (3D viewer)",jt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Ot("Whole piece, STL (3D printing)",jt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Ot("Filled cavity, GLB (3D viewer)",jt(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Ot("Cavity, STL (3D printing)",jt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${wn()||`The drawing has the pour line ${x(_t(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Wy=t=>Cy(t);var It={at:"/decorations"},nr=t=>`${It.at}/${t}`,xo=t=>O("run",`${nr(t)}/name`).trim()||`Decoration ${t+1}`,le=()=>$(a.run.now,"/cut")!==void 0,di=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Ms=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var ve="/batch",Iy=t=>`${t}/moulds_owned`;function Tm(){return F({name:"batches",pointers:[ve],summary:`Batches${bO()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${C("run",ve)}
        <div class="row">${wO()} ${vO()}</div>
        ${A({question:"Cavities at each filling",at:ve,asked_at:`${ve}/fill`,chosen:g("run",`${ve}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Ey("fill",t==="full"?t:void 0)})}`})}function bO(){let[t,e]=[`${ve}/pieces`,`${ve}/casts`].map(o=>O("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Ey(t,e){let n=gt("run",ve,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function wO(){let t=g("run",`${ve}/casts`)!==void 0,e=(n,o)=>h({label:o,at:`${ve}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return le()?g("run",`${ve}/pieces`)!==void 0?s`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${yO}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function yO(){q("run","Counted in loaves",ve,Ey("pieces",void 0))}function vO(){let t=`${ve}/whippings`;return!be()&&g("run",t)===void 0?u:h({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var kO={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},We={at:"/dust"},wu=t=>O("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function Ny(){dt("set-up dust"),U(We,{name:""},"Dust")}function xO(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function jy(t){let e=`/dust/${t}`,n=xO(e),o=wu(t),i=r=>({...gt("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...kO[r]});return s` ${h({label:"Which powder",at:`${e}/name`})}
  ${A({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${bo("run",e,o)}`}var TO={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function RO(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function Hy(t,e){let n=RO(t),o=i=>({...gt("run",t,["on_top","buried"]),...TO[i]});return di(t)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:di(t)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:F({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>s` ${A({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?SO(`${t}/on_top`):n==="buried"?DO(t,e):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function SO(t){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${qy(t,"It is turned")}`}function qy(t,e){let n=o=>h({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return F({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var AO=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function DO(t,e){let n=`${t}/buried`,o=e===k(It).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${C("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${A({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${A({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:AO,puts:l=>OO(t,l)})}
  ${i==="said"?MO(t,e):u}`}var PO=()=>s`<svg
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
  </svg>`,Uy={x:"",y:"",height:""};function OO(t,e){let n=gt("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Ms(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Uy);return{...gt("run",t,["per_piece","per_cast"]),[zy(t)]:i.length,buried:{...n,places:i}}}var zy=t=>le()?"per_cast":Ms(t)??"per_piece";function FO(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>M(r,`${t}/${l}`,void 0),n);return M(i,`${t}/${zy(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function MO(t,e){let n=FO(t),o=k(n);return s`${PO()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,d=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${E(n,r)} role="group" aria-label="Place ${r+1} of ${xo(e)}">
        ${C("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${K(n,r,`place ${r+1} of ${xo(e)}`)}
        </div>
        ${qy(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${tt(n,"Add a place",()=>U(n,Uy,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Jy=t=>`${t} made`;function LO(){let t=nr(k(It).length),e=le()?{}:{per_piece:""};dt("set-up decorate");for(let n of[Jy(t),`${t} where`])Vt("run",n);U(It,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Vy(){let[t,e]=[k(It).length>0,k(We).length>0];return s`${tt(It,t?"Add another decoration":"Add a decoration",LO)}
  ${tt(We,e?"Add another dust":"Add a dust",Ny)}`}function Qy(t){let e=nr(t);return s` ${C("run",e)} ${EO(e)}
    <div class="row">
      ${CO(e)} ${h({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${di(e)==="bought"?u:BO(e)}
    </div>
    ${Hy(e,t)} ${bo("run",e,xo(t))}`}var BO=t=>s`${h({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function CO(t){let e=Ms(t),n=et("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(le()&&e==="per_piece"))return s``;let o=e==="per_cast"?le()?"In each loaf":"In each cast":le()?"On each bar":"On each piece",i=r=>({...gt("run",t,["per_piece","per_cast"]),[r]:e?g("run",`${t}/${e}`):""});return s`${le()?A({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?h({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var WO={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},Ky={density:"",melt_loss:"",left_in_jug:""};function IO(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(Ky),"time_per_tray_fill"]:[]],o=di(t)==="bought"&&e!=="bought"?Ky:{};return{...gt("run",t,n),...o,...WO[e]}}function EO(t){let e=di(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return F({name:Jy(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${t}/name`})}
          ${h({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${A({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>IO(t,o)})}
        ${e?NO[e](t):u}
        ${e==="bought"?u:h({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var NO={mould:jO,rod:t=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>s`<div class="row">
      ${h({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>h({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function jO(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return s`${Ni("Cast in",`${t}/mould`,a.files?.moulds)}
  ${A({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?h({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${A({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Ie=()=>a.plan?.piece.cost?.materials.map(t=>t.name)??[],nt=t=>a.fats.find(e=>e.id===t)?.name??t,Rm=8;function ci({key:t,label:e,offers:n,among:o,taken:i,take:r}){let l=`find-${t}`,d=a.finding?.key===t?a.finding.text:"",c=(d.trim()?HO(d,o):n).filter(y=>!i(y)),p=y=>{f({finding:void 0}),r(y)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(y=>te(nt(y))===te(m)),b=()=>{if(!m)return;let y=c.find(J=>te(nt(J))===te(m)||te(J)===te(m)),T=c.length===1?c[0]:void 0;(y??T??_)&&p(y??T??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${e}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${y=>f({finding:{key:t,text:y.target.value}})}
        @keydown=${y=>{y.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,Rm).map(y=>s`<button type="button" @click=${()=>p(y)}>${nt(y)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>Rm?s`<p class="hint">${c.length-Rm} more: type a part of the name.</p>`:u}
  </div>`}function HO(t,e){let n=e?[]:Ie(),o=te(t).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>En(l,t)!==void 0).map(({id:l})=>l),r=l=>o.every(d=>te(nt(l)).includes(d));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var zn="/packaging",or={at:zn,stays:!0},Gy={material:"",each_piece:""},qO={studio:void 0,own:[Gy],nothing:[]},UO=()=>g("run",zn)===void 0?"studio":k(or).length?"own":"nothing";function Sm(){let t=UO();return F({name:"packaging",pointers:[zn],summary:`Packaging${zO(t)}`,body:()=>s`${A({question:"What goes round each piece",at:zn,is_told_elsewhere:t==="own",chosen:t,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:e=>qO[e],then:e=>e==="own"?`${zn}/0/material`:zn})}
      ${t==="own"?KO():u}`})}function zO(t){if(t==="studio")return"";if(t==="nothing")return": none";let e=et("run",zn).map(({material:n})=>nt(String(n??""))).filter(Boolean);return e.length?`: ${e.join(", ")}`:""}var KO=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(or).map((t,e)=>{let n=String(t.material||`packaging ${e+1}`);return s`<div class="row" id=${E(or,e)}>
        ${h({label:`Material ${e+1}`,at:`${zn}/${e}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${e+1}`,at:`${zn}/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${K(or,e,n)}
      </div>`})}
    ${tt(or,"Another material",()=>U(or,Gy,"A material"))}`;function Yy(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!be()?u:s`<div class="labelled">
      ${Pc(t,"Make one pot of lye solution for both",e,{})}${Nn("lye_solution")}
    </div>
    ${Ve("lye_solution")}
    ${e?h({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Zy(t){let e={at:"/bottles"},n=k(e);return F({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&bt(t)?` Weights are of ${bt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${E(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${K(e,i,l)}
            </div>
            ${C("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${t?JO(t,i,l):u}
          </div>`})}
        ${tt(e,"Use up a bottle",()=>U(e,{name:"",holds:""},"bottle"))}`})}function JO(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,r)=>W({key:`bottle.${e}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:X(a.units,at(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${r}.g`}))}var Ls="/label",Dm=()=>g("run",Ls)!==void 0;function Xy(){let e=g("studio",ir.studio)!==void 0?{weight_spread:""}:{market:""};dt("set-up label"),q("run","Label added",Ls,e,B("lane-label"))}function tv(){return s`${C("run",Ls)} ${VO()}
    <button type="button" @click=${()=>q("run","Label removed",Ls,void 0)}>Remove the label</button>`}var ir={run:"/label/market",studio:"/label/market"};function Pm(){let{of:t,at:e}=ts(ir);return s`${A({of:t,question:"Where it is sold",at:t==="run"?Ls:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?QO(n):n})}
  ${$o("Where it is sold",[ir])}`}function VO(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Pm()}
  ${A({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:GO})}
  ${t==="weighed"?YO():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${fn(ir)==="EU"||g("run",Am)!==void 0?Pc(Am,"With the e mark",g("run",Am)===!0,!0):u}`}var Am="/label/e_mark";function QO(t){return{...gt("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function GO(t){let e=gt("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function YO(){let t={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(t).map((e,n)=>s`<div class="row" id=${E(t,n)}>
            ${h({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${K(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${tt(t,"One more piece",()=>U(t,"","piece"))}`}function ev(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,r=t.batches.map(c=>`${Hc(t)?`${c.count} of `:""}${Ze(t,c)}`),l=`Made in ${e} batches${Hc(t)?": ":" of "}${Wt(r)}; ${ll(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Qt(t)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${V(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?s`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?s`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var nv=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function ov(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?av(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,d=t.pipe?ZO(t,e,n,l):0;return{brim:n,line:o,topping:d,ball:r,proud:l,top:Math.max(n,(t.pipe?n:o)+d+l)}}function ZO(t,e,n,o){let i=Je($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(t.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,d]=jd(e,e.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*t.pipe.visible_each_ml/c}function Om(t,e){let[n,o]=jd(t,t.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),d=m=>-(e.brim+e.topping*m/r),c=(m,_,b)=>{let y=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${y} ${d(m)} ${y} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${d(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Bs=(t,e)=>t===e?`shaded ${e}`:"plain";function To(t,e,n=u){return s`${iv(t,e,n)}
  ${t==="decorate"&&Fm(e)?s`<p class="hint">${Fm(e)}</p>`:u}`}var Ro=(t,e)=>s`<div class="small-view">${iv(t,e,u)}</div>`;function iv(t,e,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=ov(e,o),r=o.right-o.left,l=Math.max(6,r*.1),d={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${lF(t,e)}>
      ${XO(t)} ${tF(t,e,o,i)} ${nF(t,e,o,i)} ${oF()}
      ${iF(t,e,o,i)} ${aF(t,e,o,i)}
      ${R`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function rv(t,e){let n=a.measured.outline,o=ov(t,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-e)/l,per_mm:1/l,w:i+2*r,h:l}}function XO(t){return R`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${nv(sv())} /></clipPath>
  </defs>`}function sv(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function tF(t,e,n,o){let i=t==="cut"?"pour":t,r=e.pour.layers??[],l=(r.length?r.map(d=>eF(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${t})">${l.map((d,c)=>R`<path class="whole" d=${d} /><path class="${Bs(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function eF(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function nF(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${t})"><rect class=${Bs(t,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function oF(){return R`<path class="wall" fill-rule="evenodd" d=${nv(sv())} />`}function iF(t,e,n,o){let i=(n.left+n.right)/2,r=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return R`
    ${e.pipe?R`<path class=${Bs(t,"pipe")} d=${Om(n,o)} />${t==="pipe"?R`<path fill="url(#dots-pipe)" d=${Om(n,o)} />`:u}`:u}
    ${t==="dust"?rF(e,n,o):u}
    ${o.ball?R`<circle class=${Bs(t,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>sF(Bs(t,"decorate"),i,d,c,p))}`}function rF(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return R`<path class="powder" d=${t.pipe?Om(e,n):o} />`}function sF(t,e,n,o,i){let[r,l]=[e+n.middle_mm[0],n.middle_mm[2]],d=Je($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Je($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return R`<circle class=${t} cx=${r} cy=${-l} r=${av(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),y=c*_+2*b,T=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${t} x=${-y/2} y=${-d/2} width=${y} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${r} ${-l}) rotate(${T})" />`}var av=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Fm(t){let e=(t.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function aF(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return R`${Array.from({length:i-1},(r,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return R`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function lF(t,e){let n=x(_t(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Fm(e)}`.trim()}var uF=t=>`set-up ${t}`;function ue({name:t,title:e,drawing:n,result:o,about:i,form:r}){let l=uF(t),d=()=>Fe({part:e,fold:l},r);if(jn())return s`${d()}`;i.some(([m,_])=>Jt(m,_))&&dt(l);let c=a.open.has(l),p=Ei().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>Et("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${d()}</div>`:u}
  </section>`}var Tt=t=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${t}</p>`;var lv=()=>k(It).length>0,uv=()=>k(We).length>0;function dv(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function cv(t){let e=t?k(It).flatMap((n,o)=>fv(t,o)??[]):[];return ue({name:"decorate",title:"Decorate",drawing:t&&(()=>Ro("decorate",t)),result:e.length?e.map(n=>pF(t,n)):Tt(pv(It,xo)),about:[["run",It.at]],form:()=>s`${t?s`<div class="side">${To("decorate",t)}</div>`:u}
        <div class="weights">${t?k(It).map((n,o)=>dF(t,o)):u}</div>
        ${hv(It,xo,Qy)}`})}var pv=(t,e)=>`${k(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function dF(t,e){let n=fv(t,e);return n?mF(t,n,e):u}function mv(t){let e=t?.dust?.length?k(We).map((n,o)=>hF(t,o)):void 0;return ue({name:"dust",title:"Dust",drawing:t&&(()=>Ro("dust",t)),result:e??Tt(pv(We,wu)),about:[["run",We.at]],form:()=>s`<div class="side">${t?To("dust",t):u}</div>
        <div class="weights">${t?k(We).map((n,o)=>gF(t,o)):u}</div>
        ${hv(We,wu,jy)}`})}var fv=(t,e)=>dv(t.decorations,k(It),O("run",`/decorations/${e}/name`),e);function hv(t,e,n){return s`<div class="all-questions">
    ${k(t).map((o,i)=>s`<section class="questions" id=${E(t,i)} aria-labelledby="${E(t,i)}-title">
          <div class="part-head">
            <h3 id="${E(t,i)}-title">${e(i)}</h3>
            ${K(t,i,e(i))}
          </div>
          ${Fe({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function cF(t,e){return s`<h3>${t.name}</h3>
    ${W({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function pF(t,e){if(e.bought)return Tt(s`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=x(X(a.units,at(e,"make_")));return Tt(s`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${Qt(t.whole)?", for the whole run":""}.`)}function mF(t,e,n){return e.bought?cF(e,n):s`<h3>${e.name} ${Qt(t.whole)?s`<small>for the whole run</small>`:u}</h3>
    ${W({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:X(a.units,at(e,"make_")),of:`decorations.${n}.make_g`})}
    ${W({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(e.volume_each_ml,2)} ml`,shown:H(a.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?s`<p>${go(e.casting_s)} of casting.</p>`:u} ${fF(e,n)}`}function fF(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":x(_t(a.units,l)),r=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?x(_t(a.units,Math.min(...d))):"nothing near"};return s`<h4>Fit of ${t.name}</h4>
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
              </div>`:u}
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
              </div>`:u}
    </dl>
    ${Zo(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function hF(t,e){let n=gv(t,e);if(!n)return u;let o=bt(t);return Tt(s`<b>${x(X(a.units,at(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var gv=(t,e)=>dv(t.dust,k(We),O("run",`/dust/${e}/name`),e);function gF(t,e){let n=gv(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=W({key:`set-up.dust.${e}`,label:n.name,note:bt(t),shown:X(a.units,at(n,"")),of:`${t.place}.dust.${e}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function _v(t){let e=t?.cut;return ue({name:"cut",title:"Cut",drawing:t&&(()=>Ro("cut",t)),result:e?_F(t,e):Tt("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${e?$F(t,e):u}
        <div class="all-questions">${bb()}</div>`})}var _F=(t,e)=>Tt(s`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${x(H(a.units,t.piece.fresh_g))} on average, fresh.`);function $F(t,e){return s`<div class="side">${To("cut",t)}</div>
    <div class="weights">
      ${W({key:"cut.bar",label:"A bar on average, fresh",note:bF(e),shown:H(a.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${W({key:"cut.offcuts",label:"Offcuts",shown:H(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${wF(e)}
    </div>`}function bF(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function wF(t){return t.one_more?.length?s`<ul class="limits">
    ${t.one_more.map(e=>s`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function $v(t){return ue({name:"label",title:"Label",drawing:vF,result:Tt(yF(t)),about:[["run","/label"]],form:()=>s`<div class="more">${tv()} ${t?dm(t):u}</div>`})}function yF(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${x(H(a.units,e,0))}</b>, sold in the ${t.label.market}.`}var vF=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Kn=t=>h({...t,of:"studio"});function bv(){let t=(e,n,o)=>F({of:"studio",name:`ready ${e}`,pointers:[e],summary:s`<span>${n}<small>${ft("studio",e).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",RF)} ${t("/blends","Melted blends of fats",DF)}
    </div>
  </section>`}var kF=["/prices","/packs","/have","/waste"],xF=t=>(e,n)=>kF.reduce((o,i)=>$(o,`${i}/${j(t)}`)===void 0?o:os(o,i,t,n),e);function TF(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(r=>r===t?e:r):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let d=$(r,l);return d===void 0?r:M(r,l,n(d))},i)}function wv({at:t,name:e,label:n,body:o}){let i=(l,d)=>Ue([["studio",l],["run",TF(e,d)]]),r=`${t}/${j(e)}`;return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${ei("studio",t,e)}
    </div>
    ${C("studio",r)}
    <div class="row">${ns({of:"studio",at:t,name:e,label:n,also:xF(e),put:i})}</div>
    ${o}
    <div class="row">
      ${Kn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Kn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Kn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var rr="/lye_solutions",RF=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${ft("studio",rr).map(t=>wv({at:rr,name:t,label:"What you call it",body:SF(t)}))}
    ${Hi({of:"studio",at:rr,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>ot("studio",`${rr}/${j(t)}/alkali`)})}`;function SF(t){let e=`${rr}/${j(t)}`,n=O("studio",`${e}/alkali`),o=n||"alkali",i=O("studio",`${e}/strength`);return s`${A({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${e}/strength`})}
    <div class="row">
      ${Kn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${Kn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${AF(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Kn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${Kn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${C("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${ne({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Kn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function AF(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Cs="/blends",DF=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${ft("studio",Cs).map(t=>wv({at:Cs,name:t,label:"What you call it",body:PF(t)}))}
    ${Hi({of:"studio",at:Cs,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>B(`find-blend ${t}`)})}`;function PF(t){let e={of:"studio",at:`${Cs}/${j(t)}/fats`,stays:!0},n=k(e),o=i=>n.some(r=>r.fat===i);return s`${C("studio",e.at)}
  ${n.map((i,r)=>s`<div class="row" id=${E(e,r)}>
        ${Kn({label:nt(String(i.fat)),at:`${e.at}/${r}/share`,unit:"%",short:!0})}
        ${K(e,r,nt(String(i.fat)))} ${C("studio",`${e.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${zi("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${ci({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:OF(),among:"fats",taken:o,take:i=>U(e,{fat:i,share:""},nt(i))})}`}var OF=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=a.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],yv=t=>k({of:"studio",at:`${Cs}/${j(t)}/fats`}).map(({fat:e})=>String(e)),sr=t=>{let e=g("studio",`${rr}/${j(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Ws=t=>`/${t}/lye_from`,Is=t=>`/${t}/blend`;function Es(t){let e=ft("studio","/lye_solutions").length>0||g("run",Ws(t))!==void 0,n=ft("studio","/blends").length>0||g("run",Is(t))!==void 0;if(!e&&!n)return u;let o=[...vv(t),kv(t)].filter(Boolean).join(", ");return F({name:`/${t} ready`,pointers:[Ws(t),Is(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${e?MF(t):u} ${n?BF(t):u}`})}function vv(t){let e=g("run",Ws(t));return typeof e=="string"?[e]:et("run",Ws(t)).map(String)}var FF=t=>et(t,"/alkali").map(e=>String($(e,"/alkali")));function MF(t){let e=Ws(t),n=Y("run",e),o=vv(t),i=FF(t),r=[...new Set([...ft("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(sr(m).alkali)),d=r.filter(m=>!l.includes(m)),c=Pt("run",e),p=m=>{let{alkali:_}=sr(m),b=o.includes(m),y=o.filter(Ht=>Ht!==m&&(b||sr(Ht).alkali!==_)),T=b?y:[...y,m],J=T.length>1?T:T[0];q("run",`${m}: ${b?"no":"yes"}`,e,J)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Wt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${sr(m).words}
          </button>`)}
    </div>
    ${$t(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?s`<p class="hint">Of another alkali than this formula's: ${d.map(m=>sr(m).words).join(", ")}.</p>`:u}
  </div>`}var kv=t=>{let e=g("run",Is(t));return typeof e=="string"?e:O("run",`${Is(t)}/name`)};function LF(t,e){let n=et(t,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:d})=>d===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return yv(e).every(r=>i.has(r.toLowerCase()))}var Mm="\0singly";function BF(t){let e=Is(t),n=kv(t),o=[...new Set([...ft("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||LF(t,d)),r=o.filter(d=>!i.includes(d)),l=g("run",`${e}/share`)!==void 0;return s`${A({question:"Blend of fats that is weighed",at:e,chosen:n||Mm,answers:[[Mm,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===Mm?void 0:d,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>q("run","Its share",e,{name:n,share:""},ot("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var Ao="/pour/layers",So={at:Ao,in_order:!0},Lm=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],vu=()=>k(So);function CF(){let t=e=>vu().some(n=>e in n);return Lm.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Tv(t){let e=vu(),n=CF();return e.length?s`<h3>
      Layers, lowest first ${t&&bt(t)?s`<small>${bt(t)}</small>`:u}
    </h3>
    ${A({question:"All of them by",at:Ao,is_told_elsewhere:!0,chosen:n,answers:Lm,puts:o=>IF(o,t)})}
    <div class="items">${e.map((o,i)=>EF(o,i,n,t))}</div>
    ${tt(So,"One more layer on top",()=>U(So,{name:WF(e),[n]:""},"layer"))}`:s`<p class="choice">
      ${tt(So,"Pour it in layers",()=>U(So,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function WF(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function Rv(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function IF(t,e){let n=vu(),o=a.is_old?void 0:e,i=(r,l)=>{let d=Rv(o,r,l);return t==="parts"||!d||t==="depth"&&"tilted"in r?"":t==="depth"?`${S(d.to_mm-d.from_mm,3)} mm`:`${S(d.mass_each_g,3)} g`};return n.map((r,l)=>{let d=yu(l),c=t!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(r,l)}}})}var yu=t=>gt("run",`${Ao}/${t}`,[...Lm.map(([e])=>e),"rest"]);function EF(t,e,n,o){let i=`${Ao}/${e}`,r=String(t.name)||`Layer ${e+1}`,l=Rv(o,t,e);return s`<div class="part" id=${E(So,e)} role="group" aria-label="Layer ${r}">
    ${l&&o?NF(o,l,e):s`<p class="part-title">${r}</p>`} ${C("run",i)}
    ${HF(t,e,n,r)}
    ${o&&l?l.colours.map((d,c)=>jF(o,d,e,c)):u}
    ${F({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${KF(i,r)} ${JF(i,e)}
        ${K(So,e,r)}`})}
  </div>`}function NF(t,e,n){return W({key:`pour.layer.${n}`,label:e.name,note:`${kc(_t(a.units,e.to_mm-e.from_mm))} thick, ${kc(H(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?H(a.units,e.g):X(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function jF(t,e,n,o){return W({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${S(e.teaspoons,1)} tsp`:"",shown:ii(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function HF(t,e,n,o){if(n==="parts")return qF(t,e,o);let i="rest"in t;return s`${i?u:h({label:`${o}, ${n}`,at:`${Ao}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?zF(e,n):UF(e,n)}
    >
      Takes the rest
    </button>`}function qF(t,e,n){let o=`${Ao}/${e}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(t.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function UF(t,e){let n=vu().map((o,i)=>i===t?{...yu(i),rest:!0}:o.rest?{...yu(i),[e]:""}:o);q("run","takes the rest",Ao,n)}function zF(t,e){let n=`${Ao}/${t}`;q("run","amount of the layer",n,{...yu(t),[e]:""},ot("run",`${n}/${e}`))}function KF(t,e){let n={at:`${t}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${E(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${K(n,i,l)}
      </div>
      ${C("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${bo("run",r,l)}
    </div>`})}
  ${tt(n,"Add a colour",()=>U(n,{name:"",rate:""},"colour"))}`}var xv=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function JF(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===k(So).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:ne({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${A({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:xv,puts:r=>r})}
        ${F({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!xv.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var nn=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Bm(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=nn()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${nn()}`,`${S(i,2)} mm`)}function Sv(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Je($(a.run.now,`/pour/line/${nn()}`));return n===void 0?t.pour.below_brim_mm:nn()==="depth"?e-n:n}function VF(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function QF(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Sv(t),{share:o,h:i}=rv(t,e-n),r=c=>VF(c,p=>Bm(t,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Bm(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${x(_t(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function GF(t){let{pour:e}=t,n=x(_t(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",r=bt(t);return Tt(s`${o}, <b>${x(H(a.units,e.mass_each_g))}</b> ${i}; make
      <b>${x(H(a.units,e.make_g))}</b>${r?` for ${r}`:""}.`)}var Av=()=>nn()==="depth"?"Depth":"Below brim";function Dv(t){return ue({name:"pour",title:"Pour",drawing:t&&(()=>Ro("pour",t)),result:t?GF(t):Tt(`${YF()}.`),about:[["run","/pour"]],form:()=>s`${t?ZF(t):XF()}
        <div class="more">
          ${ku("pour")} ${Es("pour")} ${Tv(t)} ${wl("pour")}
        </div>`})}function YF(){let t=O("run",`/pour/line/${nn()}`);return t?`${t} ${nn()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function ZF(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Bm(t,Sv(t)+i);return s`<div class="side">
      ${To("pour",t,QF(t))} ${Pv(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:Av(),at:`/pour/line/${nn()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${W({key:"pour.each",label:"Weigh into each",shown:H(a.units,e.mass_each_g),note:`${S(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${W({key:"pour.mm",label:"1 mm more or less",shown:vt(a.units,e.ml_per_mm,2),note:`${Kt(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${W({key:"set-up.pour.make",label:"Base to make",note:bt(t),shown:H(a.units,e.make_g),of:`${n}.make_g`})}
      ${W({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var XF=()=>s`<div class="side">
    ${Pv()} ${C("run","/pour/line")}
    ${h({label:Av(),at:`/pour/line/${nn()}`,unit:"mm"})}
  </div>`,ku=t=>s`<button type="button" @click=${()=>se(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function Pv(t){let e=n=>{if(n===nn())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;q("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return ct("The pour line is measured",nn(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var tM=[0,50,80,100];function Ov(t){let e=t?.pipe;return ue({name:"pipe",title:"Pipe",drawing:e&&(()=>Ro("pipe",t)),result:e?eM(t,e):Tt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?nM(t,e):oM()})}function eM(t,e){let n=bt(t);return Tt(s`Pipe <b>${S(e.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,e.mass_each_g))} at this
      whipped density; make <b>${x(H(a.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function nM(t,e){return s`<div class="side">
      ${To("pipe",t)}
      ${W({key:"pipe.each",label:"Topping on each",shown:vt(a.units,e.volume_each_ml),note:`${S(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${W({key:"set-up.pipe.make",label:"Topping to make",note:bt(t),shown:H(a.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${W({key:"pipe.density",label:"Whipped density",note:`overrun ${S(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${ku("pipe")} ${Es("pipe")}
    </div>
    <div class="weights">${cp(e)} ${Bv()} ${iM(t)} ${dM(t)}</div>
    <div class="more">${dp(e)} ${up()}</div>`}var Ns=t=>t===0?"pipe":`pipe.whipping${t}`,js=(t,e)=>`${t.place}.pipe.whippings.${e}`;function Fv(t,e){let n=al(t,e);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function oM(){return s`<div class="more">${dp()}</div>
    <div class="side">${Bv()} ${g("run","/pipe/whip_now")===void 0?u:Lv()}</div>
    <div class="weights">${cp()} ${ku("pipe")} ${Es("pipe")}</div>
    <div class="more">${up()}</div>`}var Mv=t=>bt(t)?s`<small>${bt(t)}</small>`:u;function iM(t){return s`<h3>Today's bowl ${Mv(t)}</h3>
    ${Lv()} ${t.whippings.map((e,n)=>rM(t,e,n))}`}function rM(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return s`${Fv(t,e)}
  ${o==null?u:W({key:`${Ns(n)}.now`,label:"Enough for",note:r,shown:[V(o,"piece"),""],size:"weigh",of:`${js(t,n)}.pieces_now`})}
  ${aM(t,e,n)}`}function Lv(){let t=g("run","/pipe/whip/holds"),e=t===void 0?ds():{holds:t,net:""};return ne({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:sM})}function sM(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${cs("/pipe/whip_now")}
  </div>`}function aM(t,e,n){return e.readings?.length?F({name:`${Ns(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>lM(t,e,n)}):u}function lM(t,e,n){return s`<table class="readings">
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
        ${e.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Zo(`${Ns(n)}.readings`,"Show the calculation",`${js(t,n)}.readings`)}`}function Bv(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",t))?.[1]?.replace(",",".")),n=Jt("run",t);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${_o("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${tM.map(o=>s`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>Z("run",t,`${o} %`)}
          >
            ${uM(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function uM(t){let e=52*(t/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function dM(t){let e=t.whippings.map(i=>({one:i,words:cM(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:s`<h3>Limits of whisk, bowl and time ${Mv(t)}</h3>
    ${e.map(({one:i,words:r})=>s`${Fv(t,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Zo("pipe.limits","How the limits come about",`${js(t,0)}.limits`)}`}function cM({piping_s:t,lye_spoonfuls:e}){return[t?`${go(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${go(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Wv(t){return ue({name:"lye",title:"Lye",drawing:mM,result:t?Cv(t).map(pM):Tt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${t?s`<div class="more jugs">${Cv(t).map(fM)} ${gM(t)}</div>`:u}
        <div class="more">${Yy()} ${Zy(t)}</div>`})}function Cv(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,r)=>{let l=al(t,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:js(t,r),pieces:e,key:Ns(r)}});return[n,...o]}function pM({title:t,batter:e,slot:n,pieces:o}){let i=fo(n,o).length?" \u26A0":"";return Tt(s`${t}: ${S(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${ae(e.superfat_percent.effective)}${i}</b>.`)}var mM=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function fM({slot:t,title:e,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,d=fo(t,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===t;return s`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${W({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${W({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${ae(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${Vr(t,c,i)} ${Iv(n.superfat_percent)} ${hM(n,o,r)}
    ${!p||g(t,"/superfat")===void 0?u:h({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Iv(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:r}=t,l=`It lies between ${ae(e)} and ${ae(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${ae(o)} and ${ae(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return vc(e)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function hM(t,e,n){return t.heat?s`${Ev(t.heat)} ${Zo(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function Ev(t){let e=i=>x(e$(a.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?go(i.shortest_min*60):"at once"} to ${go(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function gM(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,r,l,d,c="")=>W({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${t.place}.lye_pot.${d}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(e.strength_percent,1)} %${bt(t)&&`; ${bt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",X(n,at(e,"water_")),"water_g")}
    ${e.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,X(n,at(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",X(n,at(e,"lye_")),"lye_g",_M(e))}
    ${e.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,X(n,at(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${ae(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,X(n,at(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${Vr(r===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Iv(i.superfat):u}`)}
    ${e.left_g?s`<p class="aside of-plan">
            ${x(X(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?Ev(e.heat):u}
  </div>`}function _M(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=at(t,"lye_"),i=X(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${x(i)} with the pot: make up with water to that after cooling`}var Hs=new Map,$M=()=>Hs.clear(),bM=t=>typeof t?.owned=="number"?t.owned:void 0;function Cm(t){let e=re(t,a.files?.moulds);return Hs.has(e)||(Hs.set(e,void 0),wM(e)),Hs.get(e)}async function wM(t){try{Hs.set(t,bM(wt((await qt(t)).text))),Q()}catch(e){if(!(e instanceof w))throw e}}async function Nv(t,e){let n=Cm(t);n!==void 0&&(Z("studio",e,n),D(`${n} kept in the studio`),await yM(re(t,a.files?.moulds)),st())}async function yM(t){let e=await Bt(ie,t);e.shipped||e.theirs||(Ct(e,M(e.now,"/owned",void 0)),await an(e),$M())}var xu=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Tu=t=>t[0].toUpperCase()+t.slice(1),Ru=t=>h({...t,of:"studio"});function jv(){return!jn()&&a.run.file&&a.open.has("folded studio days")&&Gi("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${F({of:"studio",name:"days",pointers:["/days",...tn()?[]:["/work"]],summary:s`<span>When you work${s`<small>${vM()}</small>`}</span>`,body:kM})}
  </section>`}function vM(){let t=g("studio","/days/making")??{};return xu.filter(e=>t[e]).map(e=>`${Tu(e)} ${String(t[e])}`).join(", ")}var kM=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${xu.map(t=>Ru({label:Tu(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${C("studio","/days")} ${C("studio","/days/making")} ${xM()} ${TM()} ${SM()}
    ${tn()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${Ul(g("studio","/days")!==void 0)}</div>
            ${C("studio","/work")}`}`;function xM(){let t="/days/small_jobs",e=Y("studio",t),n=et("studio",t),o=l=>{let d=xu.filter(p=>p===l!==n.includes(p)),c=p=>Hn(M(p,t,d.length?[...d]:void 0),"/days");$e("studio",`${Tu(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Jt("studio",t),r=xu.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Tu(l)}
          </button>`)}
    </div>
    ${$t(e,i,"Without any, these wait for a making day.")}
  </div>`}var qs={of:"studio",at:"/days/off",and:t=>Hn(t,"/days")};function TM(){return s`<p class="question">Days off and holidays</p>
    ${k(qs).map((t,e)=>RM(String(t),e))}
    ${tt(qs,"Add a day off",()=>U(qs,"","A day off"))}`}function RM(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),r=Y("studio",n),l=Pt("studio",n),d=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,y)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${P(b)}
        @input=${T=>y(T.target.value)}
        @blur=${ti}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:u}
      />
      ${m===r?$t(r,l):u}
    </div>`,p=o?`off on ${N(o)}`:`day off ${e+1}`;return s`<div class="row" id=${E(qs,e)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>d(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>d(o,m))} ${K(qs,e,p)}
  </div>`}function SM(){let t=(e,n,o)=>Ru({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${Ru({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${AM()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var AM=()=>ne({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>Ru({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var DM={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Hv=t=>({run:t,studio:t}),Wm=t=>Hv(`/losses/${t}`);function Im(t,e){return DM[t].map(({name:n,label:o,unit:i,optional:r})=>Nt(Hv(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var Em={holds:"",paid:""},Su=t=>({of:"studio",at:`/packs/${j(t)}`,in_order:!0,and:(e,n)=>n?e:ji(Hn(e,"/packs"),[`/serves_as/${j(t)}`])});function Uv(t){let e=a.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function zv(t,e){let n=new Set(Uv(e).map(o=>o.toLowerCase()));return ft("studio",t).find(o=>n.has(o.toLowerCase()))}var pi=t=>zv("/packs",t),Kv=t=>Ie().includes(t)||a.fats.some(e=>e.id===t)?"g":void 0,Jv="money packs";function Vv(t){return s`${ft("studio","/packs").map(e=>PM(e,t))}
  ${ci({key:"pack",label:"Which material comes in packs?",offers:Ie(),taken:e=>pi(e)!==void 0,take:Au})}`}function PM(t,e){let n=Su(t),o=nt(t);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>FM(n,r,o,Kv(t),e))}
    <div class="row">
      ${tt(n,s`Another pack of ${o}`,()=>U(n,Em,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${j(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${OM(t)}
    </div>
  </div>`}var qv=t=>`/serves_as/${j(t)}`;function OM(t){let e=qv(t),n=O("studio",e),o=new Set(Uv(t)),i=[...new Set([...Ie(),...ft("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",qv(l))===void 0),r=l=>d=>Hn(M(d,e,l||void 0),"/serves_as");return!n&&(Ie().some(l=>o.has(l))||!i.length)?u:mt({label:"Another make of",of:"studio",at:e,answers:i.map(l=>[l,nt(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>$e("studio",`${nt(t)}: ${l?nt(l):"a material of its own"}`,r(l))})}function FM(t,e,n,o,i){let r=`${t.at}/${e}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),d=g("studio",`${r}/density`)!==void 0||Jt("studio",`${r}/holds`);return s`<div class="row" id=${E(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${MM(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${K(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function MM(t){let e=`${t}/from`,n=ft("studio","/sellers");return n.length?mt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:e,optional:!0,short:!0})}function Au(t){let e=`/packs/${j(t)}`,[n,o]=[`/prices/${j(t)}`,`/money/prices/${j(t)}`],i=Yi().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(BM),l=r.length?[...r,Em]:[Em];Ue([["studio",c=>LM(M(ji(c,[n]),e,l))],...i!==void 0?[["run",c=>ji(c,[o])]]:[]]),D(r.length?`The price of ${nt(t)} is its first pack now`:`${nt(t)} added`),Vt("studio",Jv),I(Qe(E(Su(t),l.length-1)))}var LM=t=>$(t,"/currency")?t:M(t,"/currency",Vl());function BM(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var Qv=t=>s`<button
    type="button"
    aria-label="Another pack size of ${nt(t)}"
    @click=${()=>Au(t)}
  >
    Another pack size
  </button>`;function Gv(t){let e=pi(t),n=et("studio",Su(e).at).length,o=()=>{Vt("studio",Jv),I(Qe(E(Su(e),0)))};return s`<div class="row">
    <p>${nt(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${nt(t)}" @click=${o}>To its packs</button>
  </div>`}function Yv(){let t=e=>`/have/${j(e)}`;return s`${ft("studio","/have").map(e=>{let n=Kv(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:nt(e),at:t(e),unit:n,hint:o,short:!0})}
      ${ei("studio","/have",e,nt(e))}
    </div>`})}
  ${ci({key:"have",label:"Which material stands on the shelf?",offers:Ie(),taken:e=>zv("/have",e)!==void 0,take:e=>q("studio",`${nt(e)} added`,t(e),"",ot("studio",t(e)))})}`}var Zv=({key:t})=>`money ${t}`;function ek(){if(!tn())return u;let t=WM(Vl());return!jn()&&t.some(e=>a.open.has(`folded studio ${Zv(e)}`))&&El(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${CM()}
    <div class="folds">
      ${t.map(e=>F({of:"studio",name:Zv(e),pointers:e.pointers,summary:s`<span>${e.title}${e.told?s`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var CM=()=>g("run","/money/currency")===void 0?u:s`<div class="row">
        ${mi({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,mi=t=>h({...t,of:"studio"}),Du=t=>ft("studio",t).map(nt).join(", ");function WM(t){let e=(i,r,l={})=>mi({label:r,at:i,told:t,short:!0,...l}),n=(i,r)=>e(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=O("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:Du("/packs"),body:()=>Vv(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Du("/sellers"),body:()=>EM(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:Du("/have"),body:Yv},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(ar).map(i=>nt(String($(i,"/material")))).join(", "),body:jM},{key:"work",title:"Work",pointers:["/work"],told:o(si("paid_an_hour"),` ${t} an hour`),body:()=>qM(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:UM},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${mi({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Du("/asking"),body:()=>zM(e)}]}var IM=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:d},c)=>d===t?M(l,`/packs/${j(i)}/${c}/from`,n):l,o),e);function EM(t){let e=(n,o)=>`/sellers/${j(n)}/${o}`;return s`${ft("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${ei("studio","/sellers",n)}
        </div>
        <div class="row">
          ${ns({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:IM(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${mi({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Hi({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ot("studio",e(n,"postage"))})}`}var ar={of:"studio",at:"/packaging"},NM=t=>!Ie().includes(t)&&!a.fats.some(e=>e.id===t);function jM(){let t=e=>k(ar).some(n=>$(n,"/material")===e);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(ar).map((e,n)=>HM(String($(e,"/material")??""),n))}
    ${ci({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>ft("studio",e)).filter(NM),taken:t,take:e=>U(ar,{material:e,each_piece:""},e)})}`}function HM(t,e){let n=pi(t)!==void 0||g("studio",`/prices/${j(t)}`)!==void 0;return s`<div class="row" id=${E(ar,e)}>
    ${mi({label:`${nt(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:s`<button type="button" aria-label="Say its price: ${t}" @click=${()=>Au(t)}>
            Say its price
          </button>`}
    ${K(ar,e,t)}
  </div>`}function qM(t){let e=g("studio","/work")!==void 0;return s`<div class="row">
      ${t(si("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${Ul()}
    </div>
    ${C("studio","/work")}`}var Xv=(t,e)=>A({of:"studio",question:t,at:`/tax/${e}`,chosen:O("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),UM=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ne({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${mi({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${Xv("The prices you pay are","prices_paid")} ${Xv("The prices you ask are","prices_asked")}`})}`,tk=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function zM(t){let e=n=>`/asking/${j(n)}`;return s`${ft("studio","/asking").map(n=>KM(n,e(n),t))}
  ${Hi({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ot("studio",e(n))})}
  ${JM(t)}`}function KM(t,e,n){let o=g("studio",e)??{},i=tk.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>mi({label:l,at:`${e}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${ei("studio","/asking",t)}
    </div>
    <div class="row">${ns({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${A({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:tk,puts:l=>({[l]:""}),then:l=>`${e}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Us={of:"studio",at:"/price_endings"},JM=t=>s`<p class="question">A price ends in</p>
    ${k(Us).map((e,n)=>s`<div class="row" id=${E(Us,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${K(Us,n,`ending ${n+1}`)}
        </div>`)}
    ${tt(Us,"Add an ending",()=>U(Us,"","An ending"))}`;var VM=t=>lt()&&pi(t)===void 0&&Yi().length>0;function nk(){if(!tn())return s`<button type="button" @click=${QM}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${j(e)}/${n}`;return{run:Jl.run+o,studio:Jl.studio+o}};return s`<div class="row">
      ${Nt(kn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Ie().map(e=>pi(e)===void 0||g("run",t(e,"paid").run)!==void 0?s`<div class="row">
              ${Nt(t(e,"paid"),{label:`${nt(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Nt(t(e,"for"),{label:`for how much ${nt(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${VM(e)&&fn(t(e,"paid"))?Qv(e):u}
            </div>`:Gv(e))}
    </div>
    ${Ie().length?u:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function QM(){let t=lt()?"studio":"run",e=t==="studio"?kn.studio:kn.run;q(t,"Prices added",e,"",ot(t,e))}var lr=t=>({run:t,studio:t}),Nm=t=>({run:`/pipe/${t}`,studio:`/${t}`}),GM=lr("/scales"),ok=lr("/spoilage"),YM=lr("/pots");function jm(t){return ue({name:"studio",title:"My studio",result:Tt(ZM()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>XM(t)})}function ZM(){let t=a.beside.studio?.file;return t?s`What is the same in every run, kept in ${t}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function XM(t){let e=tL(t),n=[...e.flatMap(o=>o.all),...le()?[vl]:[]];return s`${lt()?u:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Mc(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${$o(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${lt()?s`${ek()} ${bv()} ${jv()}`:u}`}function tL(t){let e=be(),n=[{title:"Scales",all:[GM],body:eL},{title:"Losses",all:[Wm("pour"),...e?[Wm("pipe")]:[]],body:()=>nL(e,t)},{title:"Rejects",all:[ok],body:iL},{title:"Pot and lye jug",all:[YM],body:rL},{title:"Moulds owned",all:ik().map(({shared:o})=>o),body:aL},{title:"Prices paid",all:Yi(),body:nk}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Nm),body:sL},{title:"Weigh-cups",all:[],body:cb}),lt()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[ir],body:Pm}),n}function eL(){let t=(e,n)=>s`${Nt(lr(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Nt(lr(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function nL(t,e){return s`<div class="row">
      ${Im("pour",t?"Base":void 0)} ${t?Im("pipe","Topping"):u}
    </div>
    ${e?oL(e):u}`}function oL({pour:t,pipe:e,...n}){let o=bt({pour:t,pipe:e,...n}),i=(r,{in_pieces_g:l,lost_g:d})=>`${r}: ${x(H(a.units,l))} in the pieces, ${x(H(a.units,d))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var iL=()=>Nt(ok,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function rL(){let t=(e,n,o)=>Nt(lr(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function sL(){let t=(n,o,i,r=!1)=>Nt(Nm(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),e=n=>fn(Nm(n))!==void 0;return s`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function ik(){return["/pour",...k(It).map((e,n)=>nr(n))].flatMap(e=>{let n=O("run",`${e}/mould`);return n?[{mould:n,shared:{run:Iy(e),studio:`/moulds_owned/${j(Lc(n))}`}}]:[]})}function aL(){return s`<div class="row">
    ${ik().map(({mould:t,shared:e})=>{let n=a.files?.moulds.find(r=>r.file===t)?.name??t,o=fn(e)===void 0?Cm(t):void 0,i=()=>{Nv(t,`/moulds_owned/${j(Lc(t))}`)};return s`${Nt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&lt()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Hm(t){let e=t&&qi(t);return s`${uL(t)}
    <div class="set-up">${rk(e)} ${lL()} ${jm(e)}</div>`}function rk(t){return s`${Dv(t)} ${be()?Ov(t):u}
  ${lv()?cv(t):u} ${uv()?mv(t):u}
  ${le()?_v(t):u} ${Wv(t)} ${Dm()?$v(t?.whole):u}`}function lL(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${be()?u:s`<button type="button" @click=${pb}>Add a topping</button>${mb()}`}
      ${Vy()} ${$b()}
      ${Dm()?u:s`<button type="button" @click=${Xy}>Draft the label</button>`}
    </div>
  </section>`}function sk(t=u){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Ni("Mould","/pour/mould",a.files?.moulds)}
    ${Ni("Base","/pour/formula",a.files?.formulas)}
    ${be()?Ni("Topping","/pipe/formula",a.files?.formulas):u} ${t}
  </div>`}function uL(t){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    ${sk(t?dL(t):u)}
    <div class="batches">${t?ev(t):u} ${Tm()} ${Sm()}</div>
  </section>`}function dL(t){let{sell:e,make:n,fillings:o,cavities:i,casts:r,batches:l}=t.pieces,d=Qt(t)?`${l} batches, ${V(o,"filling")}`:ll(o,i);return W({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function cL(){let e=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(pL);return[Fe({part:"Run"},()=>[sk(),Tm(),Sm()]),...e.map(n=>Fe({part:String(a.formulas[n].now.name||"Formula")},()=>ew(n))),rk(),jm()]}var pL=(t,e,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[t])===e;u$(cL);var mL={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function ak(t){let e=r=>r.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(r=>!e(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${mL[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var qm="begin-title";function lk(t){let{record:e}=a;if(e.run!==a.run.file||e.version===void 0)return u;let{number:n,since:o}=t,i=o===void 0?void 0:Go(n,o);if(i)return fL(i,t);if(e.beginning?.batch===n)return hL(e.beginning,t);let r=()=>{vy(n),I(B(qm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return s`<div class="begin-record">
    <button type="button" class=${t.is_due?"strong":""} @click=${r}>Lye is mixed: begin the record</button>
  </div>`}function fL(t,{show:e}){let{told:n}=a.record,o=()=>{Qo(t.begun.id),e()};return s`<div class="begin-record is-begun">
    ${_u(t)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===t.begun.id&&n.remarks.length?s`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>s`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function hL(t,e){let{number:n,words:o,seen:i,is_struck:r}=e,l=Go(n),{complaint:d,is_asking:c}=t,p=!r&&!c&&!eo(n);return s`<div class="begin-record asked" role="group" aria-labelledby=${qm}>
    <p id=${qm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?gL(l,e):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${P(t.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>ky(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{hm(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${fm}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?_L(d,i):u}
  </div>`}var gL=(t,{show:e})=>s`<p>
      There is a record of it already, <b>${t.begun.code}</b>: ${Os(t)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{fm(),Qo(t.begun.id),e()}}
      >
        Go on in ${t.begun.code}
      </button>
    </p>`;function _L(t,e){let n=t.choices??[];return s`<div role="alert">
    <p class="alarm">
      ${n.length||t.field==="begin"?`${t.problem}.`:`${L(t)}.`}
    </p>
    ${n.map(o=>s`<button type="button" class="answer" @click=${()=>{xy(o,e)}}>
          ${$L(o)}
        </button>`)}
  </div>`}function $L(t){let{confirmed:e,lot:n}=t;return t["beyond-stock"]?`There is more than the records say: take it of lot ${t["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${e??""}`}function uk(t,e){let n=t?.batches.findIndex(({numbers:l})=>l.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function ur(t){let e=to(t);return e?.finished_at?"done":e||eo(t)?"under way":"not begun"}var bL=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:t})=>t));function wL(t){let{chosen:e}=a.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,r)=>r+1),o=i=>n.find(r=>ur(r)===i);return o("under way")??o("not begun")??1}function Um(){let t=bL(),e=wL(t),n=to(e),o=uk(a.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?uk(n.plan,e):o}}var xn=({kept:t})=>!t&&a.is_old,dr=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var yL=6,vL={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function ck({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,r)=>r+1),o=i=>`Batch ${i}, ${ur(i)}`;return e>yL?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>dk(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:ct("Which batch is weighed",String(t),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${vL[ur(i)]}</span> ${i}<small>
          ${ur(i)}</small
        >`]),i=>dk(Number(i)))}function dk(t){hg(t),D(`Batch ${t}, ${ur(t)}`)}var Pu="";function pk(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return kL(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!no(n,l).is_done).length,r=()=>i?mk(e.id):void Ad(n);return s`<div class="batch-end">
    <p class="aside">Begun ${hk(e.begun_at)}; its weights stay as they were then.</p>
    ${Pu===e.id?fk(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Ad(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${eo(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function kL({kept:t,number:e},n){let{id:o}=t;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${hk(n)}.</p>
    ${Pu===o?fk("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Fr(e)}):s`<button type="button" @click=${()=>mk(o)}>Start this batch anew</button>`}
  </div>`}function mk(t){Pu=t,Q(),I(B("batch-stays"))}function fk(t,e,n){let o=()=>{Pu="",Q(),I(B("run-title"))};return s`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var xL=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),hk=t=>xL.format(new Date(t));var TL={pour:"Base",pipe:"Topping"},gk=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function _k(t,e){let[n,o]=[gk(t),gk(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${TL[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var zm=3,Km=new Map,Jm="";function RL(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:r}=a;if(r&&!mf(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:L(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=_k(n.vessels,o.vessels),d=new Set(dr(n).map(({text:p})=>p)),c=dr(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function $k(t){let e=RL(t),{kept:n}=t;if(!e||!n)return u;if(Km.get(n.id)===e.mark)return DL(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${SL(e)}
    </p>
    ${AL(e)}
    ${e.dangers.map(i=>s`<p class="danger"><strong>${ge}</strong> As it is now: ${i}</p>`)}
    ${Jm===n.id?FL(t):PL(t,e)}
  </div>`}function SL({told:t,refusal:e}){if(e!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-zm;return s`${t.slice(0,zm).join("; ")}${n>0?` and ${n} more.`:"."}`}var AL=({told:t})=>t.length>zm?s`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function DL(t){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Km.delete(t),Q())}>What has changed</button>
  </div>`}function PL(t,{mark:e,refusal:n}){let{id:o}=t.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Km.set(o,e),Q(),I(B("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>OL(t)}>Start this batch anew</button>`:u}
  </div>`}function OL(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Fr(t.number);Jm=o,Q(),I(B("keep-weighing"))}function FL(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Jm="",Q(),I(B("run-title"))},o=()=>{n(),Fr(t.number)};return s`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var bk=({text:t})=>s`<p class="danger"><strong>${ge}</strong> ${t}</p>`;function wk(t){let e=new Set(a.dangers.run.map(({text:o})=>o)),n=dr(t).filter(({text:o})=>!e.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(bk)}</div>`:u}var ML=({vessel:t})=>["lye","lye_pot","share"].includes(t),LL=({batter:t},e)=>!t||!e.batter||t===e.batter;function yk(t,e){if(!ML(e))return u;let n=dr(t).filter(o=>LL(o,e));return n.length?s`<div class="dangers">${n.map(o=>s`${bk(o)} ${BL(o)}`)}</div>`:u}function BL({batter:t,topic:e}){return!t||e==="heat"?s`<button type="button" class="to-cause" @click=${WL}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>CL(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function CL(t){se(t),requestAnimationFrame(()=>I(ot(t,"/superfat")))}function WL(){f({view:"watch"}),I(B("watch-title"))}var Vm=(t,e)=>s`<p class="do ${xn(t)?"old":""}">${e}</p>`;function vk(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,r=o<.05?"Pour to the brim":`Pour to ${x(_t(a.units,o))} below the brim`;return Vm(t,s`${r}, <b>${x(H(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function kk(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Vm(t,s`Whip until the level weigh-cup holds <b>${x(H(a.units,n.net_g))}</b>.`):u}function xk(t,{batch:e}){let{pipe:n}=e;return n?Vm(t,s`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}var IL=({vessel:t})=>t==="lye"||t==="lye_pot";function Tk(t,e,n){let o=a.plan?.lye_of_day;if(!IL(n)||!(o??EL()))return u;if(o&&!o.may_be_shared)return s`<p class="day-pot">${o.text}</p>`;let i=t.planned?.mark===e.mark;return s`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${i?NL(t,n):s`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${xe({name:"days",file:a.run.file})}>To Days, where each pot stands</a>
  </div>`}var EL=()=>!a.plan&&$(a.beside.studio?.now,"/days/one_lye_a_day")!==void 0;function NL(t,e){let{days:n,complaint:o,is_old:i}=Gi("run");if(o)return s`<p>The days of this run cannot be told yet: Days says why.</p>`;if(!n||i)return s`<p>Asking for the days of this run ...</p>`;let r=HL(n,t.number,e);return r?s`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${kt(r.made)} for
      ${xt(r.for)}:
    </p>
    ${qL(r,t.number,e)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`:s`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`}var jL=({vessel:t,batter:e})=>t==="lye_pot"?"all":e==="pipe"?"topping":"base",HL=({lyes:t},e,n)=>t.find(o=>o.lye_of===jL(n)&&o.batches.some(({batch:i})=>i===e));function qL({batches:t,pot:e},n,o){let i=t.filter(({batch:l})=>l===n).flatMap(({shares:l})=>l),r=o.rows.filter(({role:l})=>!["water","ice","alkali"].includes(l)).map(({name:l})=>l);return s`<ul>
      ${i.map(l=>{let d=e.shares[l],c=d.top_up_g>0?x(X(a.units,at(d,"top_up_"))):"";return s`<li>
          ${d.batter}: <b>${x(X(a.units,at(d,"lye_"),"down"))}</b> of the lye
          solution${c?s`, and <b>${c}</b> of plain water`:u}
        </li>`})}
    </ul>
    ${r.length?s`<p>Into the share, as below: ${Wt(r)}.</p>`:u}`}function Rk(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Oe(n)===o?n:e,""]}function Sk(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return zL(t,e,n);let o=UL(t,e,n);return o===void 0?void 0:{place:o}}function UL({batch:t,plan:e,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return Dk(i,r,t,n);case"layers":return JL(r,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Qm(r.name,t.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:Qm(r.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===e.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return KL(i,r,t,n)}}function zL({vessels:t},e,n){let o=t.find(r=>r.vessel==="lye"&&r.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Ak=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function KL(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Ak(t)),r=t.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:Dk(t,e,n,o,"lye")}function Qm(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function Dk(t,e,n,o,i=t.vessel){let r=Ak(t),[l,d]=t.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function JL(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Qm(t.name,e[o].colours,`${n}.${o}.colours`)}function Gm(t,e,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>no(t.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Pk(n)}>
    <div class="vessel-head">
      <h3 id=${Pk(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${Tk(t,e,n)} ${yk(e,n)}
    ${cl(n.rows,({key:r})=>r,r=>VL(t,e,n,r))}
  </section>`}var Pk=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function VL(t,e,n,o){let{is_done:i,is_waiting:r}=no(t.number,o.key),[l,d]=Rk(a.units,o),c=xn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${P(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>QL(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?s` <i>${d}</i>`:u}</span>
    </label>
    ${GL(t,e,n,o)}
  </div>`}function QL(t,{mark:e},n,o){if(!xn(t))return pg(t.number,e,n.key,o.checked);o.checked=!o.checked,D("Not ticked: what is struck through is not to be weighed.")}function GL(t,e,n,o){let{planned:i}=t,r=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&Sk(i,r,o);if(!l)return u;let d=`weigh.${t.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Et("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Sc(l.place):tl(l.working)}</div>`:u}`}function Ym(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Ok(t,e){let{planned:n,whip_today:o}=a;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||YL(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Zm=!1;async function YL(t,e){let{planned:n}=a;if(Zm||!n)return;Zm=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let r=await Qs({...n,run:M(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...ZL(r,t)}})}catch(r){if(!(r instanceof w))throw r;f({whip_today:{...o,complaint:L(r.complaint)}})}finally{Zm=!1}}function ZL(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var tf,Xm,XL=t=>tf??(Oe(t)==="oz"||!t&&a.units==="us"?"oz":"g");function Fk(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=zo(t.number),i=XL(o),r=t.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Nn("weigh_cup")}</div>
    ${Ve("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(Xm??o)}
        ?disabled=${r}
        @input=${l=>Xm=l.target.value}
        @change=${l=>eB(t,e,l.target.value,i)}
      />
      ${ct("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],tB)}
    </div>
    ${nB(t,e,n,o)} ${iB(e,n)}
  </div>`}function tB(t){tf=t,Q()}function eB(t,{mark:e},n,o){Xm=void 0;let i=Dt(n)?`${n.trim()} ${o}`:n.trim();if(tf=void 0,i===zo(t.number))return Q();if(xn(t))return D("Not taken: the weights are not those of what is typed."),Q();mg(t.number,e,i),t.kept&&Wa(Go(t.number,t.kept.begun_at),i)}function nB(t,e,n,o){if(!o)return u;let i=Ok(t.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${oB(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function oB({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return s`${o} <b>${V(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function iB(t,e){let n=t.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>s`<table class="readings">
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
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var zs="pour",Mk=()=>Um().kept!==void 0;function Lk(t){$a(),uo();let e=Um(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${zs} aria-labelledby="run-title">
    ${rB(e)} ${aB(e)}
    ${e.weights&&n?s`${wk(e.weights)} ${$k(e)} ${lB(e,e.weights,t)}`:u}
    ${e.weights&&n&&!ef(e)?Ck(e,e.weights,t):u}
    ${pk(e)}
  </section>`}function rB(t){let{weights:e}=t;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(a.run.now.name??"")}</h1>
    ${e?s`<p class="which">${sB(t,e)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${ck(t)}
    </div>
  </div>`}function sB(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),r=i.filter(({key:d})=>no(t.number,d).is_done).length,l=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return s`<b>${l}${Ze(e,n)}</b>, ${r} of ${i.length} weighed`}function aB({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,d=o!==void 0&&eo(t);return s`<div class="bench-told" role="status">
    ${i?.batch===t?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${gg}>I have looked</button>`:u}
    ${d?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function lB(t,e,n){let{vessels:o}=e,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),d=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>Gm(t,e,_));return s`${fB(c,r)}
    <div class="batters ${c?"two":""}">
      ${Ou("ahead","To have ready",p(l))}
      ${Ou("base",c?"Base":"Batter",uB(t,e,i("pour"),l,n))}
      ${c?Ou("topping","Topping",[...p(i("pipe")),pB(t,e),Ym(i("pipe"),cB(t,e))]):u}
      ${Ou("after","At the end",p(d))}
    </div>`}var Bk=({vessel:t})=>t==="lye"||t==="lye_pot";function ef(t){let n=(t.weights?.vessels??[]).filter(o=>Bk(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>no(t.number,o).is_done)}var Ck=(t,{plan:e,batch:n,mark:o},i)=>lk({number:t.number,words:`${t.of>1?`batch ${t.number} of ${t.of}`:"this batch"}, ${Ze(e,n)}`,seen:o,since:t.kept?.begun_at,is_struck:xn(t),is_due:ef(t),show:i}),Ou=(t,e,n)=>n.some(o=>o!==u)?s`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function uB(t,e,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>Gm(t,e,m)),d=n.filter(p=>!r(p)),c=d.map(Bk).lastIndexOf(!0);return[...l(d.slice(0,c+1)),ef(t)?Ck(t,e,i):u,...l(d.slice(c+1)),vk(t,e),...l(n.filter(r)),Ym([...o,...n],dB(t,e))]}var Wk=(t,e,n=u)=>s`<p class=${xn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>ae(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,dB=(t,{batch:e})=>Wk(t,[e.pour],_o("superfat_as_weighed")),cB=(t,{batch:e})=>Wk(t,e.pipe?.whippings??[]),pB=(t,e)=>s`${kk(t,e)} ${Fk(t,e)} ${xk(t,e)}`,mB={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function fB(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>mB[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===zs)||(zs="pour"),s`<div class="narrow">${ct("What is shown",zs,o,hB)}</div>`)}function hB(t){zs=t,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Ik=()=>s`${ri(Mk()?"No new weights can be given.":void 0)} ${Lk(()=>{Yt("record")})}`;var gB={"set-up":Hm,watch:ak,money:py,days:Yw,mould:Ly,print:Wy};function Ek(t){let e=s`${fa().map(o=>gn(o))} ${ma().map(_n)}`;if(t==="weigh")return s`${e} ${Ik()}`;if(t==="record")return s`${e}
    ${Dy({to_weights:()=>{Yt("weigh")},to_learned:()=>{Yt("learned")}})}`;if(t==="learned")return s`${e} ${ri()} ${uy()}`;let{plan:n}=a;return s`${e} ${ri()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?gB[t](n):_B(t)}`}function _B(t){return a.complaint?t==="set-up"?Hm():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var $B=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function jk(){let t=a.new_run;if(!t)return s`<p class="choice"><button type="button" class="strong" @click=${$B}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=kl(t.sell),r=e.trim()&&n&&o&&i,l=()=>{pt(async()=>{await za({name:e.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${P(e)}
          @input=${d=>v(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Nk(t,"mould","Mould",bB())} ${Nk(t,"formula","Base",wB())}
      ${xl("new-run-sell",t.sell,d=>v(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?u:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var bB=()=>[...(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...a.catalogue.map(t=>[t.path,t.name])],wB=()=>(a.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Nk(t,e,n,o){let i=`new-run-${e}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(t,{[e]:l.target.value})}>
      <option value="" .selected=${P(t[e]==="")}>choose ...</option>
      ${o.map(([l,d])=>s`<option value=${l} .selected=${P(l===t[e])}>${d}</option>`)}
    </select>
  </div>`}var yB=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function qk(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped).sort(yB),n=t.filter(o=>o.shipped);return s`${Be("Runs")} ${jk()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Xe(e,Hk):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Xe(n,Hk)}
    </section>
    ${Ce("run")}`}function Hk(t){let{pieces:e,mould:n,due:o,made_on:i,changed:r}=t,l=[e===void 0?"":V(e,"piece"),n??"",o?`due ${N(o)}`:"",i?`made ${N(i)}`:r?`changed ${N(r)}`:""].filter(Boolean);return $n({kind:Co,one:t,facts:l,picture:vB(n),open:()=>Wn(t.file)})}var vB=t=>a.files?.moulds.find(e=>e.name===t)?.file??a.catalogue.find(e=>e.name===t)?.path;var fi=({material:t,lot:e})=>`${t}:${e}`,Uk=(t,e)=>t.material===e.material&&t.lot.toLowerCase()===e.lot.toLowerCase(),zk=(t,{lots:e})=>e.filter(n=>Uk(n,t));function nf(t){return t[0]?.left.pieces!==void 0?{pieces:t.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(t.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function Kk(t,{kind:e,of:n}){if(e==="counted"){let i=t?.materials.flatMap(l=>l.lots)??[],r=i.find(l=>fi(l).toLowerCase()===n.toLowerCase());return r?nf(i.filter(l=>Uk(l,r))):{g:0}}return{pieces:t?.pieces.find(({batch:i})=>i===n)?.there??0}}var cr=({kind:t,of:e},n)=>`shelf-${`${t}-${e}-${n}`.replaceAll(/[^\w]+/g,"-")}`,rf=({complaint:t},e)=>t&&t.field===e&&!t.asks?L(t):void 0;function Lt(t,{name:e,label:n,kind:o,number:i,count:r,hint:l}){let d=cr(t,e),c=rf(t,e),p=c??l;return s`<div class="field ${c?"wants":""}">
    <label for=${d}>${n}</label>
    <input
      id=${d}
      type=${o??"text"}
      inputmode=${r?"numeric":i?"decimal":u}
      autocomplete="off"
      spellcheck="false"
      .value=${P(t.typed[e]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
      @input=${m=>Ke(t,{typed:{[e]:m.target.value}})}
    />
    ${p?s`<p id="${d}-said" class=${c?"complaint":"hint"}>${p}</p>`:u}
  </div>`}var Zt=({typed:t},e)=>t[e]?.trim()||void 0;function Fu(t,e,n,o){let i=(t.typed[e]??"").trim().toLowerCase(),r=i.split(/\s+/),l=o.filter(c=>r.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?u:s`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,of).map(c=>s`<button type="button" @click=${()=>Ke(t,{typed:{[e]:c}})}>${c}</button>`)}
    </div>
    ${l.length>of?s`<p class="hint">${l.length-of} more: type a part of the name.</p>`:u}`}var of=8;var pr=({kind:t,of:e})=>`shelf-form-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`;function mr(t){let{form:e,title:n,act_words:o,fields:i}=t,r=pr(e),l=()=>{lc(e),I(kB(e))};return s`<form
    class="shelf-act"
    aria-labelledby=${r}
    @submit=${d=>{d.preventDefault(),Qk(t)}}
  >
    <p class="part-title" id=${r} tabindex="-1">${n}</p>
    ${i} ${xB(t)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${e.is_asking}>
        ${e.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var kB=({kind:t,of:e})=>B(`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`),Jk=(t,e)=>`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`,Vk="shelf-told";async function Qk({form:t,act:e,names:n}){let o=e();if(o&&await Ea(t,o))return I(B(Vk));let i=Cn(t)?.complaint;i&&I(B(n.includes(i.field)&&!i.asks?cr(t,i.field):`${pr(t)}-said`))}function xB(t){let{form:e,names:n}=t,{complaint:o}=e;if(!o||n.includes(o.field)&&!o.asks)return u;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,r=l=>()=>{l(),Qk(t)};return s`<div role="alert">
    <p class="alarm" id="${pr(e)}-said" tabindex="-1">${xt(L(o))}</p>
    ${i===void 0?u:s`<button type="button" class="answer" @click=${r(()=>s_(e,i))}>It is so</button>`}
    ${o.asks==="seen"?s`<button type="button" class="answer" @click=${r(()=>a_(e,Kk(a.stock.list,e)))}>
            Record it even so
          </button>`:u}
  </div>`}function fr(t){let{told:e}=a.stock;return e?.of!==t?u:s`<div class="told" id=${Vk} tabindex="-1">
    <div>${e.sentences.map(n=>s`<p>${xt(n)}</p>`)}</div>
  </div>`}var TB={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},RB={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function sf(t){let e=[...TB[a.units],...RB[a.units]];return t==="pieces"?["pieces"]:t==="mass"?e:[...e,"pieces"]}var Gk=(t,e,n)=>t.typed[`${e}-unit`]??(n==="pieces"?"pieces":void 0);function Mu(t,e,n,o){let i=sf(o),r=Yk(t.typed[e])?void 0:Gk(t,e,o);return s`<div class="amount-asked">
    ${Lt(t,{name:e,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>s`<button
            type="button"
            aria-pressed=${l===r?"true":"false"}
            @click=${()=>Ke(t,{typed:{[`${e}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var Yk=(t="")=>t.trim()!==""&&!Dt(t);function Lu(t,e,n){let o=(t.typed[e]??"").trim();if(!o)return void Yo(t,e,"How much is it?");if(Yk(o))return o;let i=Gk(t,e,n);return i?`${o} ${i}`:void Yo(t,e,"In which unit?")}var Bu=()=>a.stock.list?.names,tx=(t,e)=>s`${Lt(t,{name:"on",label:e,kind:"date"})}
  ${Lt(t,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function ex(t){let e=Bu()?.currency;return mr({form:t,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:s`${Lt(t,{name:"bought",label:"Material"})}
      ${Fu(t,"bought","Materials",Bu()?.materials??[])}
      ${Mu(t,"pack","One pack holds","either")}
      <div class="row">
        ${Lt(t,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${Lt(t,{name:"price",label:`Price of one pack${e?`, ${e}`:""}`,number:!0,hint:e?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${Lt(t,{name:"seller",label:"Seller"})} ${Fu(t,"seller","Sellers",Bu()?.sellers??[])}
      ${Lt(t,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${tx(t,"Bought on")}</div>`,act:()=>{let n=Lu(t,"pack","either");return n?{bought:Zt(t,"bought")??"",pack:n,price:Zt(t,"price"),...nx(t)}:void 0}})}var nx=t=>({packs:Zt(t,"packs"),seller:Zt(t,"seller"),lot:Zt(t,"lot"),on:Zt(t,"on"),"best-before":Zt(t,"best-before")});function ox(t){return mr({form:t,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:s`${Lt(t,{name:"made",label:"What it is"})}
      ${Fu(t,"made","Made ahead",Bu()?.made_ahead??[])}
      ${Mu(t,"pack","It makes","either")} ${SB(t)}
      ${Lt(t,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${tx(t,"Made on")}</div>`,act:()=>{let e=Lu(t,"pack","either"),n=e?PB(t):void 0;return n?{made:Zt(t,"made")??"",pack:e,of:n,...nx(t)}:void 0}})}var Zk=()=>a.stock.list?.materials.flatMap(({lots:t})=>t)??[];function SB(t){let e=(i,r)=>Ke(t,{sources:t.sources.map((l,d)=>d===i?{...l,...r}:l)}),n=()=>Ke(t,{sources:[...t.sources,{lot:"",amount:"",unit:""}]}),o=rf(t,"of");return s`<div class="made-of" role="group" aria-label="What is in it">
    ${t.sources.map((i,r)=>AB(t,i,r,l=>e(r,l)))}
    <button type="button" @click=${n}>
      ${t.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${cr(t,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function AB(t,e,n,o){let i=cr(t,`of-${n}`),r=Zk().find(c=>fi(c)===e.lot),l=sf(ix(r)),d=()=>Ke(t,{sources:t.sources.filter((c,p)=>p!==n)});return s`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${P(e.lot)} @change=${c=>o({lot:Xk(c)})}>
        <option value="" ?selected=${!e.lot}>Choose</option>
        ${Zk().map(c=>s`<option value=${fi(c)} ?selected=${fi(c)===e.lot}>
              ${DB(c)}, lot ${c.lot}: ${Pe(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(e.amount)}
        @input=${c=>o({amount:Xk(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>s`<button type="button" aria-pressed=${c===e.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${d}>Leave out</button>
  </div>`}var Xk=t=>t.target.value,ix=t=>t===void 0?"either":t.left.pieces===void 0?"mass":"pieces";function DB({material:t,make:e}){let n=a.stock.list?.materials.find(o=>o.material===t);return e??n?.shown_as??t}function PB(t){let e=[];for(let{lot:n,amount:o,unit:i}of t.sources){if(!n)return void Yo(t,"of","Which lot is it?");if(!o.trim())return void Yo(t,"of","How much of it is taken?");if(Dt(o)&&!i)return void Yo(t,"of","In which unit is it?");e.push(`${n}=${Dt(o)?`${o.trim()} ${i}`:o.trim()}`)}return e}function rx(t,e){let n=ix(e[0]);return mr({form:t,title:`How much is there of lot ${e[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:s`${e.length>1?s`<p class="hint">${e.length} deliveries have this lot number: count them together.</p>`:u}
    ${Mu(t,"counted","There now",n)}
    ${Lt(t,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${Lt(t,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=Lu(t,"counted",n);return o?{counted:[`${t.of}=${o}`],why:Zt(t,"why"),on:Zt(t,"on")}:void 0}})}function sx(){let{materials:t=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Ks("bought","","Bought",!0)} ${Ks("made","","Made of others")}</div>
    ${Js("bought","",ex)} ${Js("made","",ox)} ${OB()}
    ${t.length?s`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${t.map(FB)}`:s`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Ks(t,e,n,o=!1,i,r=""){let l=()=>{ac({kind:t,of:e,seen:i}),I(B(pr({kind:t,of:e}))),requestAnimationFrame(()=>document.getElementById(pr({kind:t,of:e}))?.scrollIntoView({block:"nearest"}))};return s`<button
    type="button"
    id=${Jk(t,e)}
    class=${o?"strong":""}
    aria-expanded=${Cn({kind:t,of:e})?"true":"false"}
    aria-label=${r?`${n}: ${r}`:u}
    @click=${l}
  >
    ${n}
  </button>`}function Js(t,e,n){let o=Cn({kind:t,of:e});return o?n(o):u}function OB(){let t=a.stock.list?.not_counted??[];if(!t.length)return u;let e=()=>{ac({kind:"take-have",of:""});let o=Cn({kind:"take-have",of:""});o&&Ea(o,{"take-have":!0,on:o.typed.on})},n=Cn({kind:"take-have",of:""})?.complaint?.line;return s`<div class="part">
    <p>The studio's file lists what is no lot yet: ${t.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${e}>Take it over as lots, once</button>
    ${n?s`<p class="alarm" role="alert">${n}</p>`:u}
  </div>`}var FB=t=>s`<section class="material" aria-label=${t.shown_as}>
    <h3>${t.shown_as}</h3>
    <ul class="lots">
      ${t.lots.map(e=>MB(e,t))}
    </ul>
  </section>`;function MB(t,e){let n=fi(t),o=zk(t,e),i=o[0]===t;return s`<li class="lot ${t.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t.lot}</b>${t.make?s` <span>${t.make}</span>`:u} ${LB(t)}
      </p>
      <p class="lot-facts">${af(t).map(r=>s`<span>${r}</span> `)}</p>
      ${t.is_past?lf(t):u}
    </div>
    <div class="lot-acts">
      ${i?Ks("counted",n,"Counted",!1,nf(o),`lot ${t.lot}`):u}
      <button type="button" aria-label="Where it went: lot ${t.lot}" @click=${()=>Xt(`lot ${t.lot}`)}>
        Where it went
      </button>
    </div>
    ${i?fr(n):u}
    ${i?Js("counted",n,r=>rx(r,o)):u}
  </li>`}function LB({left:t,packs:e,pack:n}){let o=(t.g??t.pieces??0)<0,i=t.pieces===void 0?{g:-(t.g??0)}:{pieces:-t.pieces};return o?s`<span class="below"
        >${Pe(a.units,i)} more was taken than was recorded: count what is there</span
      >`:s`<b>${Pe(a.units,t)}</b>
        <span class="aside">left of ${e===1?"":`${e} \xD7 `}${n}</span>`}function af({best_before:t,is_past:e,origin:n,on:o,seller:i,paid:r,currency:l}){let d={bought:"bought",made:"made","before records":"there before records began,"}[n];return[t&&!e?`best before ${N(t)}`:"",`${d} ${N(o)}${i?` from ${i}`:""}`,r!==null?`${r} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var lf=({best_before:t,lot:e})=>s`<p class="past-words">
    Best before ${N(t)}, which is past. Is ${e} still good? No batch takes it unless you choose it.
  </p>`;async function Cu(t,e){if(Xd(t,e),a.run.file===t)return a.record.run===t&&Qo(e),f({view:"record"});try{await Wn(t,"record")}catch(n){if(!(n instanceof w))throw n;D(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}function lx(){let{pieces:t=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${t.length?s`<ul class="lots">
            ${t.map(BB)}
          </ul>`:s`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var ax=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function BB(t){let{batch:e,run:n,made:o,there:i}=t;return s`<li class="lot pieces-of" data-batch=${e}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e}</b> <span>${n}</span> ${o===null?u:s`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":uf(t)}</span> ${CB(t)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?u:ax.map(([r,l])=>Ks(r,e,l,!1,{pieces:i},`pieces of ${e}`))}
      <button type="button" aria-label="Its record: ${e}" @click=${()=>Cu(t.file,t.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${e}" @click=${()=>Xt(`batch ${e}`)}>
        What is in it
      </button>
    </div>
    ${fr(e)} ${ax.map(([r])=>Js(r,e,l=>IB(l,t)))}
  </li>`}function uf({made:t,rejected:e,sold:n,given:o,spoilt:i,counted:r=0}){let l=[[e,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(r,0),"more by count"],[Math.max(-r,0),"fewer by count"]];return[`${t??0} made`,...l.filter(([d])=>d).map(([d,c])=>`${d} ${c}`)].join(", ")}function CB({cures_until:t,for_sale:e,why_not:n,made:o}){let i=t?`cures until ${N(t)} by its formulas`:"";return e?s`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?s`<span>◔ ${i}</span>`:u:s`${i?s`<span>◔ ${i}</span> `:u}<span
      >✗ not for sale: ${xt(n)}</span
    >`}var WB={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function IB(t,{batch:e,there:n=0}){let{kind:o}=t,[i,r,l]=WB[o],d=o==="sold"||o==="given";return mr({form:t,title:`${i}, of ${e}: ${n} there`,act_words:r,names:[o,"for","order","why","on"],fields:s`${Lt(t,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${d?EB(t):Lt(t,{name:"why",label:"Why"})}
    ${Lt(t,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${e}=${Zt(t,o)??""}`],on:Zt(t,"on"),why:Zt(t,"why"),order:t.typed.order||void 0,for:t.typed.order?void 0:Zt(t,"for")})})}function EB(t){let e=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=t.typed,o=i=>Ke(t,{typed:{order:i===n?"":i}});return s`${e.length?s`<p class="question" id="for-order-${t.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${t.kind}">
            ${e.map(({file:i,name:r,pieces:l,due:d})=>s`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${r||i}
                  <small
                    >${[l===void 0?"":V(l,"piece"),d?`due ${N(d)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:u}
  ${n?u:Lt(t,{name:"for",label:e.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function ux(){let{list:t,failed:e}=a.stock;return s`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${e!==void 0?s`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${e}.</p>`:u}
      ${t?s`${NB()} ${jB()} ${HB()} ${sx()} ${lx()}`:s`<p class="hint">${e===void 0?"Reading ...":""}</p>`}
    </div>`}function NB(){let{list:t,told:e}=a.stock;return!e||!t?u:t.pieces.some(({batch:o})=>o===e.of)||t.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===e.of))?u:fr(e.of)}function jB(){let t=a.finding?.key==="trail"?a.finding.text:"";return s`<form class="row find-trail" @submit=${n=>{n.preventDefault(),t.trim()&&(f({finding:void 0}),Xt(t.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${P(t)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!t.trim()}>Follow it</button>
  </form>`}function HB(){let{has_records:t,notes:e=[]}=a.stock.list??{},n=e.filter(({severity:o})=>o==="danger");return s`${t?u:s`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>s`<p class="alarm">${xt(o)}</p>`)}`}function cx(){let{trail:t}=a.stock,{trail:e,complaint:n,choices:o=[],of:i=""}=t??{};return s`<h1 tabindex="-1">${e?UB(e):i}</h1>
    <div class="trail">
      <div class="row">
        ${qB(t)}
        ${e?s`<button type="button" @click=${()=>window.print()}>Print</button>`:u}
      </div>
      ${n?s`<p class="alarm" role="alert">${n}</p>`:u}
      ${o.length?s`<div class="row">
              ${o.map(r=>s`<button type="button" @click=${()=>Xt(r)}>The ${r}</button>`)}
            </div>`:u}
      ${e?zB(e):n?u:s`<p class="hint">Reading ...</p>`}
    </div>`}function qB(t){return t?.order!==void 0&&t.order===a.order?.open.file?s`<button type="button" @click=${()=>f({view:"order"})}>Back to the order</button>`:s`<button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>`}function UB({asked:t,is:e,batches:n}){return e==="lot"?`Where lot ${t} went`:e==="batch"?`What is in ${t}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??t} got`}function zB(t){let{is:e,lots:n,batches:o,gaps:i}=t,r=s`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${e==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?s`<ul class="lots">
            ${n.map(KB)}
          </ul>`:s`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=s`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${e==="lot"?"Batches that hold it":e==="batch"?"The batch":"Batches"}</h2>
    ${o.length?s`<ul class="lots">
            ${o.map(d=>VB(d,t))}
          </ul>`:s`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return s`${e==="lot"?s`${r} ${l}`:s`${l} ${r}`} ${ZB(i)}`}var hr=(t,e,n=e)=>s`<button type="button" class="to-trail" @click=${()=>Xt(`${t} ${e}`)}>${n}</button>`;function KB(t){let{shown_as:e}=t;return s`<li class="lot" data-lot=${t.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${hr("lot",t.lot)} <span>${t.make??e}</span> <b>${Pe(a.units,t.left)}</b>
        <span class="aside">left of ${t.packs===1?"":`${t.packs} \xD7 `}${t.pack}</span>
      </p>
      <p class="lot-facts">${af(t).map(n=>s`<span>${n}</span> `)}</p>
      ${t.is_past?lf(t):u} ${dx("Made of",t.from_lots)} ${dx("Went into",t.into_lots)}
      ${t.counts.map(({on:n,by:o,why:i})=>s`<p class="lot-facts">Counted ${N(n)}: ${JB(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function JB({g:t,pieces:e}){let n=t??e??0;return n?`${Pe(a.units,e===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var dx=(t,e)=>e.length?s`<p class="trail-line">
        ${t}
        ${e.map(n=>s`${hr("lot",n.lot)} <span>${n.material}, ${Pe(a.units,n.amount)}</span> `)}
      </p>`:u;function VB(t,{is:e,asked:n}){let{batch:o,run:i,begun_on:r,rows:l,pieces:d,went:c,cost:p}=t;return s`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${e==="batch"&&o===n?s`<b class="code">${o}</b>`:hr("batch",o)} <span>${i}</span>
        ${d.made===null?u:s`<b>${d.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${N(r)}</span>
        <span>${d.made===null?"how many were made is not noted":uf(d)}</span>
        ${p?s`<span>${QB(p)}</span>`:u}
      </p>
      ${c.length?s`<ul class="trail-went">
              ${c.map(GB)}
            </ul>`:u}
      <ul class="trail-rows">
        ${l.map(YB)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{Cu(t.file,t.id)}}>
        Its record
      </button>
    </div>
  </li>`}function QB({materials:t,unpriced:e}){let n=t.map(({amount:i,currency:r})=>`${i} ${r}`).join(" and "),o=e.length?`unpriced: ${e.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function GB({what:t,pieces:e,on:n,order:o,for:i,why:r}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[t],d=Math.abs(e),c=t==="counted"?`${d} ${e<0?"fewer":"more"} by count`:`${d} ${l}`,p=o??i;return s`<li>
    ${c} ${p?s`to ${hr("order",p,i??p)}`:u} on ${N(n)}${r?` (${r})`:""}
  </li>`}function YB({shown_as:t,weighed:e,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return s`<li>
    <span>${t}, ${Pe(a.units,e)}</span>
    ${n.map(r=>s`<span class="trail-from"
          >${hr("lot",r.lot)} ${n.length>1||i?Pe(a.units,r.amount):u}
          ${r.make??u}</span
        > `)}
    ${i?s`<span class="trail-unknown"
            >${n.length?`${Pe(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:u}
  </li>`}function ZB(t){return t.length?s`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${t.map(({batch:e,run:n,shown_as:o})=>s`<li>${hr("batch",e)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:u}function px(){let t=so();return s`${Be("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${pl(Qn,"Each file is named by the studio, or by the runs that use its tips.",e=>Br(Qn,e))}
      ${t?A$(t):u}
      ${ml({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(O$(e)):Ta(Qn,zc(e)),tried:pt})}
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
          ${Ur().map(({name:e,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${Ce("tips")}`}var hx=document.getElementById("page");function gx(){let{view:t,fault:e}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Qw()} ${q_()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${a.is_old&&!de(t)&&t!=="order"&&t!=="trail"?"old-now":""}
    >
      ${e?s`${t==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${tC()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var XB={runs:qk,orders:Hw,formulas:ow,moulds:iw,fats:j$,tips:px,shelf:ux};function tC(){let{view:t,fault:e}=a;return Rn(t)?Ek(t):de(t)?XB[t]():t==="formula"?tw():t==="order"?jw():t==="trail"?cx():e?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}sh(()=>{qb(),Te(gx(),hx),oC()});Te(gx(),hx);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||de(a.view)&&!a.mould)return;t.preventDefault();let{undo:e,redo:n}=uu();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Ha();fe()});function eC(){if(!a.run.file)return df();f({fault:void 0}),fe(),st()}function df(){f({fault:void 0}),Yb().catch(t=>{f({fault:nC(t)}),t instanceof w&&t.may_pass&&window.setTimeout(df,2e3)})}function nC(t){return t instanceof w&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var mx=new ResizeObserver(([{target:t}])=>_x(t.offsetHeight)),fx=null;function oC(){let t=document.querySelector(".foremost");t!==fx&&(mx.disconnect(),t?mx.observe(t):_x(0),fx=t)}var _x=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);lh();N_();Gb();pf(t=>{Vi(),t&&eC()});df();
