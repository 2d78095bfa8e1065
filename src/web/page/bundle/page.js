var Ti=globalThis,Ri=Ti.ShadowRoot&&(Ti.ShadyCSS===void 0||Ti.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Zl=Symbol(),Ql=new WeakMap,Si=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==Zl)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Ri&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=Ql.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&Ql.set(n,e))}return e}toString(){return this.cssText}},Xl=t=>new Si(typeof t=="string"?t:t+"",void 0,Zl);var tu=(t,e)=>{if(Ri)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Ti.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},sr=Ri?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return Xl(n)})(t):t;var{is:ag,defineProperty:lg,getOwnPropertyDescriptor:ug,getOwnPropertyNames:cg,getOwnPropertySymbols:dg,getPrototypeOf:pg}=Object,Pi=globalThis,eu=Pi.trustedTypes,mg=eu?eu.emptyScript:"",fg=Pi.reactiveElementPolyfillSupport,xo=(t,e)=>t,rr={toAttribute(t,e){switch(e){case Boolean:t=t?mg:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},ou=(t,e)=>!ag(t,e),nu={attribute:!0,type:String,converter:rr,reflect:!1,useDefault:!1,hasChanged:ou};Symbol.metadata??=Symbol("metadata"),Pi.litPropertyMetadata??=new WeakMap;var ye=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=nu){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&lg(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=ug(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let c=i?.call(this);s?.call(this,a),this.requestUpdate(e,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??nu}static _$Ei(){if(this.hasOwnProperty(xo("elementProperties")))return;let e=pg(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(xo("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(xo("properties"))){let n=this.properties,o=[...cg(n),...dg(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(sr(i))}else e!==void 0&&n.push(sr(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return tu(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:rr).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:rr;this._$Em=i;let c=a.fromAttribute(n,s.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??ou)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,c=this[i];a!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,s,c)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};ye.elementStyles=[],ye.shadowRootOptions={mode:"open"},ye[xo("elementProperties")]=new Map,ye[xo("finalized")]=new Map,fg?.({ReactiveElement:ye}),(Pi.reactiveElementVersions??=[]).push("2.1.2");var lr=globalThis,iu=t=>t,Ai=lr.trustedTypes,su=Ai?Ai.createPolicy("lit-html",{createHTML:t=>t}):void 0,ur="$lit$",ve=`lit$${Math.random().toFixed(9).slice(2)}$`,cr="?"+ve,hg=`<${cr}>`,rn=document,So=()=>rn.createComment(""),Ro=t=>t===null||typeof t!="object"&&typeof t!="function",dr=Array.isArray,du=t=>dr(t)||typeof t?.[Symbol.iterator]=="function",ar=`[ 	
\f\r]`,To=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,ru=/-->/g,au=/>/g,on=RegExp(`>|${ar}(?:([^\\s"'>=/]+)(${ar}*=${ar}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),lu=/'/g,uu=/"/g,pu=/^(?:script|style|textarea|title)$/i,pr=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=pr(1),M=pr(2),Vx=pr(3),Pt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),cu=new WeakMap,sn=rn.createTreeWalker(rn,129);function mu(t,e){if(!dr(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return su!==void 0?su.createHTML(e):e}var fu=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=To;for(let c=0;c<n;c++){let d=t[c],p,m,_=-1,b=0;for(;b<d.length&&(a.lastIndex=b,m=a.exec(d),m!==null);)b=a.lastIndex,a===To?m[1]==="!--"?a=ru:m[1]!==void 0?a=au:m[2]!==void 0?(pu.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=on):m[3]!==void 0&&(a=on):a===on?m[0]===">"?(a=i??To,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?on:m[3]==='"'?uu:lu):a===uu||a===lu?a=on:a===ru||a===au?a=To:(a=on,i=void 0);let w=a===on&&t[c+1].startsWith("/>")?" ":"";s+=a===To?d+hg:_>=0?(o.push(p),d.slice(0,_)+ur+d.slice(_)+ve+w):d+ve+(_===-2?c:w)}return[mu(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Po=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,c=e.length-1,d=this.parts,[p,m]=fu(e,n);if(this.el=t.createElement(p,o),sn.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=sn.nextNode())!==null&&d.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(ur)){let b=m[a++],w=i.getAttribute(_).split(ve),R=/([.?@])?(.*)/.exec(b);d.push({type:1,index:s,name:R[2],strings:w,ctor:R[1]==="."?Mi:R[1]==="?"?Oi:R[1]==="@"?Fi:ln}),i.removeAttribute(_)}else _.startsWith(ve)&&(d.push({type:6,index:s}),i.removeAttribute(_));if(pu.test(i.tagName)){let _=i.textContent.split(ve),b=_.length-1;if(b>0){i.textContent=Ai?Ai.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],So()),sn.nextNode(),d.push({type:2,index:++s});i.append(_[b],So())}}}else if(i.nodeType===8)if(i.data===cr)d.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(ve,_+1))!==-1;)d.push({type:7,index:s}),_+=ve.length-1}s++}}static createElement(e,n){let o=rn.createElement("template");return o.innerHTML=e,o}};function an(t,e,n=t,o){if(e===Pt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Ro(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=an(t,i._$AS(t,e.values),i,o)),e}var Di=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??rn).importNode(n,!0);sn.currentNode=i;let s=sn.nextNode(),a=0,c=0,d=o[0];for(;d!==void 0;){if(a===d.index){let p;d.type===2?p=new Sn(s,s.nextSibling,this,e):d.type===1?p=new d.ctor(s,d.name,d.strings,this,e):d.type===6&&(p=new Ci(s,this,e)),this._$AV.push(p),d=o[++c]}a!==d?.index&&(s=sn.nextNode(),a++)}return sn.currentNode=rn,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Sn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=an(this,e,n),Ro(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Pt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):du(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Ro(this._$AH)?this._$AA.nextSibling.data=e:this.T(rn.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Po.createElement(mu(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Di(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=cu.get(e.strings);return n===void 0&&cu.set(e.strings,n=new Po(e)),n}k(e){dr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(So()),this.O(So()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=iu(e).nextSibling;iu(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},ln=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=an(this,e,n,0),a=!Ro(e)||e!==this._$AH&&e!==Pt,a&&(this._$AH=e);else{let c=e,d,p;for(e=s[0],d=0;d<s.length-1;d++)p=an(this,c[o+d],n,d),p===Pt&&(p=this._$AH[d]),a||=!Ro(p)||p!==this._$AH[d],p===u?e=u:e!==u&&(e+=(p??"")+s[d+1]),this._$AH[d]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Mi=class extends ln{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Oi=class extends ln{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Fi=class extends ln{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=an(this,e,n,0)??u)===Pt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Ci=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){an(this,e)}},hu={M:ur,P:ve,A:cr,C:1,L:fu,R:Di,D:du,V:an,I:Sn,H:ln,N:Oi,U:Fi,B:Mi,F:Ci},gg=lr.litHtmlPolyfillSupport;gg?.(Po,Sn),(lr.litHtmlVersions??=[]).push("3.3.3");var ae=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Sn(e.insertBefore(So(),s),s,void 0,n??{})}return i._$AI(t),i};var mr=globalThis,Rn=class extends ye{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ae(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Pt}};Rn._$litElement$=!0,Rn.finalized=!0,mr.litElementHydrateSupport?.({LitElement:Rn});var _g=mr.litElementPolyfillSupport;_g?.({LitElement:Rn});(mr.litElementVersions??=[]).push("4.2.2");var gu=()=>{},fr=!1;function _u(t){gu=t}function J(){fr||(fr=!0,queueMicrotask(()=>{fr=!1,gu()}))}function $u(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var At=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of $u(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function C(t,e,n){return hr(t,$u(e),n)}function hr(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let c=[...t],d=hr(c[Number(o)],i,n);return d===void 0?c.splice(Number(o),1):c[Number(o)]=d,c}let s={...t??{}},a=hr(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var gr=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],Li="";function wu(t){Li=t,sessionStorage.setItem("key",t)}wu(gr()??sessionStorage.getItem("key")??"");var bu=()=>gr()!==void 0;function yu(t){addEventListener("hashchange",()=>{let e=gr();if(!e)return;let n=e!==Li;wu(e),t(n)})}var vu={status:0,body:new Blob};async function $g(t,e,n,o){try{let i=await fetch(e,{method:t,body:n,headers:{"X-Bench-Key":Li},signal:o});return{status:i.status,body:await i.blob()}}catch{return vu}}function wg(t,e,n,o){return new Promise(i=>{let s=new XMLHttpRequest;s.open(t,e),s.setRequestHeader("X-Bench-Key",Li),s.responseType="blob",s.upload.onprogress=a=>o(a.total?a.loaded/a.total:0),s.onerror=()=>i(vu),s.onload=()=>i({status:s.status,body:s.response}),s.send(n)})}var ku={send:(t,e,n,o,i)=>n!==void 0&&o?wg(t,e,n,o):$g(t,e,n,i)};var bg=ku,Z=({problem:t,remedy:e})=>[t,e].filter(Boolean).join("; "),y=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},Su={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},Ru=t=>t===Su||t.is_fault===!0,xu="what you typed is kept here";function yg(t){let[e,n]=t===503?["the program has too much to do at once",`it is asked again in a moment; ${xu}`]:["internal error in brimwright (your files are not at fault)",`${xu}: change something, or ask again`];return{file:"",field:"",problem:e,remedy:n,line:`${e} (answer ${t}); ${n}.`}}function Tu(t,e){if(t===0)return new y(0,Su);let n=yg(t),o={...n,...e.complaint};return t>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new y(t,o,e)}async function vg(t,e){try{return Tu(t,JSON.parse(await e.text()))}catch{return Tu(t,{})}}async function Pu(...t){let{status:e,body:n}=await bg.send(...t);if(e>=200&&e<300)return n;throw await vg(e,n)}var ke=async(...t)=>JSON.parse(await(await Pu(...t)).text()),xt=(t,e)=>ke("POST",t,JSON.stringify(e)),Me=()=>ke("GET","/api/files"),ft=t=>ke("GET",`/api/file?file=${encodeURIComponent(t)}`),Pn=t=>ke("PUT","/api/file",JSON.stringify(t)),Au=(t,e)=>xt("/api/file/rename",{file:t,to:e}),_r=(t,e=!1)=>xt("/api/file/remove",{file:t,even_so:e}),Du=t=>xt("/api/file/restore",{removed:t}),Mu=t=>t?`&run=${encodeURIComponent(t.run)}&bench=${encodeURIComponent(t.version)}`:"",kg=12e3,xg=([t,e])=>`&${encodeURIComponent(`file:${t}`)}=${e??""}`;async function An(t,e){let n={changed:{},unreadable:[]},o=`/api/changed?wait=0${Mu(e)}`;for(let i of Ou(t)){let{changed:s,unreadable:a,bench:c}=await ke("GET",o+i);Object.assign(n.changed,s),n.unreadable.push(...a),n.bench=c}return n}function Ou(t){let e=[""];for(let n of[...t].map(xg))e.at(-1).length+n.length>kg?e.push(n):e[e.length-1]+=n;return e}var Tg=crypto.randomUUID(),$r=2e4;async function Fu(t,e,n){let[o,...i]=Ou(t);if(i.length)return An(t,e);let a=`/api/changed?${`wait=${$r/1e3}&tab=${Tg}`}${Mu(e)}${o}`;return ke("GET",a,void 0,void 0,n)}var Bi=t=>xt("/api/plan",t),Cu=t=>xt("/api/plan",{...t,explain:!0}),Lu=t=>xt("/api/gauge",{...t,inspect:!0}),Oe=t=>xt("/api/gauge",t),wr=t=>xt("/api/list",{what:t}),Bu=async()=>(await wr("fats")).fats,Eu=async()=>(await wr("moulds")).moulds,Iu=async()=>(await wr("tips")).tips,Fe=t=>Pu("POST","/api/document",JSON.stringify(t)),Wu=async t=>(await xt("/api/document",{...t,open:!0})).address,Hu=(t,e)=>ke("POST",`/api/mesh?name=${encodeURIComponent(t.name)}`,t,e),ju=async(t,e)=>(await xt("/api/keep",{upload:t,as:e})).file;var G=t=>`${JSON.stringify(t,null,2)}
`;function ot(t){try{let e=JSON.parse(t??"");return e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0}catch{return}}var nt=["pour","pipe","apart"],$t=["studio","own_fats","own_tips"],Ei=t=>$t.includes(t);var Nu={};function Qt(t,e){(Nu[t]??=[]).push(e)}function lt(t,e){for(let n of Nu[t]??[])n(e)}var Dt=t=>t.slice(0,t.lastIndexOf("/")+1),Bt=t=>t.slice(t.lastIndexOf("/")+1),Uu=(t,e)=>{let n=Dt(t);return n?Sg(n+e):e};function Sg(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ce(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Dn(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var Rg=["mould","formula","file","own_fats","own_tips"];function br(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?br(o,i):Rg.includes(n)?[i]:[]})}function yr(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...br(t)])[n,o]=[C(n,i,void 0),C(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function vr(t,e){let n=["/id",...br(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?C(i,s,$(e,s)):i,o)}var V=(t,e)=>({name:t,label:e,unit:"mm"}),Le=V("height","Floor to brim"),Ii={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},kr={block:{words:"Box, loaf or slab",measures:[V("length","Longer side at the brim"),V("width","Shorter side"),Le,Ii,{...V("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[V("floor_diameter","Across the floor"),V("brim_diameter","Across the brim"),Le]},fluted_cup:{words:"Fluted cup",measures:[V("floor_diameter","Across the floor"),V("brim_diameter","Across the brim"),Le,{name:"flutes",label:"Flutes",unit:"",count:!0},V("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},V("across_flats","Across the flats"),Le,Ii]},dome:{words:"Bowl",measures:[V("diameter","Across the brim"),Le]},half_ball:{words:"Half ball",measures:[V("diameter","Across the brim")]},ball:{words:"Ball",measures:[V("diameter","Across")]},half_ring:{words:"Half ring",measures:[V("centre_diameter","Ring, middle to middle of the tube"),V("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[V("outer_floor_diameter","Cup, across the floor"),V("outer_brim_diameter","Cup, across the brim"),V("post_floor_diameter","Post, at its foot"),V("post_brim_diameter","Post, at its top"),Le]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[V("height","Height"),V("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Le,Ii],points:{columns:[V("x","From the left"),V("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[V("side","Straight edge, tip to round"),Le,Ii]}},zu=Object.fromEntries(Object.entries(kr).map(([t,{words:e}])=>[t,e])),Mn=t=>kr[t]?.measures??[],Be=t=>kr[t]?.points;var xr=(t,e)=>String($(t,e)??"").trim(),Ao=t=>xr(t,"/shape/kind"),Zt=(t,e)=>$(t,`/${e}`)!==void 0,Tr=t=>["body","skin"].includes(xr(t,"/mesh/role"));function Et(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Ju(t,e){return(Be(Ao(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Do(t){return Et(t,"/shape/points").flatMap((e,n)=>Ju(t,e).every(Boolean)?[n]:[])}function Wi(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Et(t,"/shape/points").flatMap((n,o)=>e(Ju(t,n))?[o]:[])}var Sr=t=>Et(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Vu(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=C(e,o,s)};return Be(Ao(t))&&n("/shape/points",Do(t)),n("/water/weighings",Sr(t)),e}function Hi(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Do(t):Sr(t);return`${n}/${s[Number(o)]??o}${i}`}function Mo(t){let e=[],n=i=>xr(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(Zt(t,"shape")){let i=Ao(t);o(i!=="","the shape");for(let{name:a,label:c,optional:d}of Mn(i))o(d||n(`/shape/${a}`),c.toLowerCase());let s=Be(i);s&&o(Do(t).length>=s.least,`${s.least} points at least`)}if(Zt(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Sr(t).length>0,"a weighing of water")}return!Tr(t)&&!Zt(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var un={name:"run",list:"runs",new_name:({shipped:t,file:e,now:n})=>t?Bt(e):Ce(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},On={name:"formula",list:"formulas",new_name:({shipped:t,file:e,now:n})=>t?Bt(e):Ce(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Rr=(t,e)=>({name:t,list:e,new_name:({file:n})=>Bt(n),written:n=>n,is_begun:()=>!0}),ji=Rr("studio","studios"),Ni=Rr("fats","fats"),Ui=Rr("tips","tips"),Mt={name:"mould",list:"moulds",new_name:({now:t})=>Ce(String(t.name),".json"),written:t=>({...Vu(t),name:String(t.name??"").trim()}),is_begun:t=>Zt(t,"shape")||Zt(t,"mesh")};var qu={},Ku={kind:un,id:"",file:"",version:null,shipped:!1,now:qu,saved:qu,unanswered:[]},Xt={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Ku,formulas:{},beside:{},past:[],future:[],is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Ag()),folded:new Set,units:Pg(),announcement:""},l=Xt;function Pg(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Gu="set-up ";function Ag(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function Dg(){let t=[...Xt.open].filter(e=>e.startsWith(Gu));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(Xt,t),J()}var E=t=>h({announcement:t});function v(t,e){Object.assign(t,e),J()}function le(t,e){let{[t]:n,...o}=Xt.formulas;h({formulas:e?{...o,[t]:e}:o})}function ue(t,e){let n=new Set(Xt[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Gu)&&Dg()}function Fn(t=Ku){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,complaint:void 0,typed:void 0,measured:void 0})}function ut(t){Xt.open.has(t)||h({open:new Set(Xt.open).add(t)})}function cn(t,e,{name:n,note:o}={}){if(!Xt.files)return;let i={file:e,name:String(n??""),note:String(o??""),shipped:!1},s=Xt.files[t].filter(c=>c.file!==e),a=Xt.files[t].findIndex(c=>c.file===e);s.splice(a<0?s.length:a,0,i),h({files:{...Xt.files,[t]:s}})}async function ce({kind:t,name:e,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:a=[],formulas:c=[],moulds:d=[],studios:p=[],fats:m=[],tips:_=[]}=l.files??{},b=Dn(e,[...a,...c,...d,...p,...m,..._]);i?.(b);let w=await Mg(b,n,o);if(cn(t.list,b,ot(w.there.text)??{name:b}),w.is_new||s?.(w.there))return w.there}}async function Mg(t,e,n){try{return{is_new:!0,there:await Pn({file:t,version:null,text:e,from:n})}}catch(o){if(!(o instanceof y)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var zi=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function dn({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let c={id:e,file:n,version:o,shipped:i,text:G(s),copy:a};localStorage.setItem(zi(t)+e,JSON.stringify(c))}catch{}}function Pr(t,e){try{return JSON.parse(localStorage.getItem(zi(t)+e)??"null")??void 0}catch{return}}var Ee=(t,e)=>localStorage.removeItem(zi(t)+e);function Ji(t){let e=zi(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Pr(t,o)??[])}var Og=300,N=t=>t.now!==t.saved;function Oo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Ot(t,e,n=e){let o=await ft(e),i=Fg(t,JSON.parse(o.text),o.shipped),s=Pr(t,n),a=s?.copy&&o.shipped?await Cg(t,s,i):void 0;if(a)return Ee(t,n),Ot(t,a);let{version:c,shipped:d=!1}=o,p={kind:t,id:n,file:e,version:c,shipped:d,now:i,saved:i,unanswered:[]};return s&&Lg(p,s,o),p}var Fg=(t,e,n=!1)=>t.name==="run"&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Cg(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=ot(e.text),i=ot((await ft(e.copy)).text);if(!(!o||!i||G(o)===G(n)))return yr(t.written(o),i)?e.copy:void 0}function Lg(t,e,n){let o=ot(e.text);if(!o||G(o)===G(t.now))return Ee(t.kind,t.id);v(t,{now:o}),!(e.version===n.version||n.shipped)&&(v(t,{version:e.version}),oc(t,n))}function ht(t,e){let n=t.now;v(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),dn(t),lt("edited",{file:t,before:n})}var Yu=new WeakMap,Ar=async t=>Yu.get(t),de=t=>Qu(t,()=>Bg(t)),Cn=t=>Qu(t,()=>t.shipped?Zu(t,Xu):Promise.resolve());function Qu(t,e){let n=Ar(t).then(e);return Yu.set(t,n.catch(()=>{})),n}async function Bg(t){!N(t)||t.theirs||await Zu(t,t.shipped||!t.file?Xu:tc)}async function Zu(t,e){v(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof y&&v(t,{failed:Z(n.complaint)}),n}}async function Xu(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await ce({kind:e,name:e.new_name(t),text:G(s),from:i,about_to:m=>dn(t,m),is_own:({text:m})=>i!==void 0&&yr(s,ot(m)??{})}),c=JSON.parse(a.text),d=vr(s,c),p=t.now===o?c:d(t.now);Ee(e,n),v(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:c}),N(t)&&dn(t),i!==void 0&&lt("copied",{file:t,from:i,renamed:d})}async function tc(t){let{version:e,now:n}=t,o=G(t.kind.written(n));v(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{Vi(t,n,(await Pn({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;ec(t,i.answer),N(t)&&!t.theirs&&await tc(t)}}function Vi(t,e,n){v(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),N(t)?dn(t):Ee(t.kind,t.id),cn(t.kind.list,t.file,e)}function ec(t,{version:e,text:n}){if(n===G(t.kind.written(t.now)))return Vi(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(v(t,{unanswered:[]}),o)return v(t,{version:e,saved:void 0,theirs:void 0});let i=N(t)||t.theirs?void 0:ot(n);i?Eg(t,i,e):oc(t,{version:e,text:n})}function Eg(t,e,n){lt("giving_way",{file:t}),v(t,{set_aside:t.now,is_taken:!0,now:e}),Vi(t,e,n),E(`${t.file} was changed outside this page, and stands here as it is now.`),lt("gave_way",{file:t})}var nc=t=>v(t,{set_aside:void 0,is_taken:void 0});function oc(t,{version:e,text:n}){v(t,{theirs:{version:e,text:n}}),dn(t),E(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),lt("conflict",{file:t})}function ic(t){if(!t.theirs)return;let e=ot(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return v(t,{failed:n})}lt("giving_way",{file:t}),v(t,{set_aside:t.now,now:e}),Vi(t,e,t.theirs.version),lt("gave_way",{file:t})}function sc(t){t.theirs&&(v(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),dn(t),lt("unwritten",{file:t}))}var pn=({theirs:t})=>t?.text===null;function rc(t){pn(t)&&(Ee(t.kind,t.id),v(t,{saved:t.now,theirs:void 0,failed:void 0}),E(`${t.file} stays deleted.`),lt("left_deleted",{file:t}))}function ac(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;ht(t,e),v(t,{set_aside:o?void 0:n})}var lc=t=>(t.theirs??t).version;function uc(t,e){v(t,{id:e,file:e}),lt("renamed",{file:t,renamed:n=>n})}async function cc(t){let{version:e,text:n}=await ft(t.file),o=ot(n);if(!o||t.theirs||e===t.version)return;let i=vr(t.now,o);if(N(t))return v(t,{version:e,now:i(t.now),saved:o});v(t,{version:e,now:o,saved:o}),lt("renamed",{file:t,renamed:i})}var dc=t=>t.shipped||!t.file?[]:[[t.file,lc(t)]];async function Dr(t,e,n,o){let i=t.file,s=()=>lc(t)===e&&t.file===i;if(!s()||(await Ar(t),!s()))return!1;o(),await Mr();let a=await Ig(i,n);return await Ar(t),s()&&(ec(t,a),N(t)&&!t.theirs&&lt("unwritten",{file:t})),!0}async function Ig(t,e){let n=await e(t);return n===null?{version:n,text:null}:ft(t)}var Mr=()=>new Promise(t=>setTimeout(t,Og));var Wg=300,Hg=1200,qi="",pc=0;function Fo(){let t={run:{file:l.run,now:l.run.now}};for(let e of nt){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of $t){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Ie(t=""){let e=performance.now();t&&t===qi&&e-pc<=Hg&&l.past.length||Or(Fo()),h({future:[]}),qi=t,pc=e}var Or=t=>h({past:[...l.past,t].slice(-Wg)});function Ln(t){Or(mc(Fo(),t,()=>t.saved??{}))}function mc(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Fr(t,e){let n=o=>o.map(i=>mc(i,t,e));h({past:n(l.past),future:n(l.future)})}function Ki(){let t=l.past.at(-1);t&&(h({past:l.past.slice(0,-1),future:[...l.future,Fo()]}),hc(t,"Undone"))}function fc(){let t=l.future.at(-1);t&&(h({past:[...l.past,Fo()],future:l.future.slice(0,-1)}),hc(t,"Redone"))}function hc(t,e){qi="",h({typed:void 0});for(let n of[...$t,...nt,"run"])jg(n,t);E(e)}function jg(t,e){let n=e[t];if(Ei(t))return Ng(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&le(t,n.file),n.file.now!==n.now&&ht(n.file,n.now))}function Ng(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&ht(e.file,e.now)}var Gi=t=>t===l.run||nt.some(e=>l.formulas[e]===t)||$t.some(e=>l.beside[e]===t);Qt("giving_way",({file:t})=>{Gi(t)&&(qi="",Or(Fo()),h({typed:void 0}))});for(let t of["copied","renamed"])Qt(t,({file:e,renamed:n})=>Fr(e,n));function Bn(t){return t==="run"?l.run:Ei(t)?l.beside[t]:l.formulas[t]}var Ug=t=>Bn(t)?.now,g=(t,e)=>$(Ug(t),e),F=(t,e)=>String(g(t,e)??"");function gt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function X(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function W(t,e,n){let o=Bn(t);!o||$(o.now,e)===n||(Ie(`${t} ${e}`),ht(o,C(o.now,e,n)))}function gc(t,e){let n=Bn(t);n&&(Ie(),h({typed:void 0}),ht(n,e(n.now)))}function En(t){Ie(),h({typed:void 0});for(let[e,n]of t){let o=Bn(e);o&&ht(o,n(o.now))}}var xe=t=>Uu(l.run.file,t);function Ft(t,e){let n=xe(t);return e?.some(o=>o.file===n)?n:t}var Cr=(t,e)=>{let{[t]:n,...o}=l.beside;h({beside:e?{...o,[t]:e}:o})};function $c(t){for(let e of $t)l.beside[e]===t&&Cr(e,void 0)}async function zg(t,e){try{let n=await Ot(t,e);return N(n)&&Ln(n),n}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function mn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await zg(e,n);return Cr(t,i),i&&N(i)&&lt("unwritten",{file:i}),i?.theirs&&lt("conflict",{file:i}),i}var wc=()=>xe("studio.json");async function In(t=!1){let e=wc(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await mn("studio",ji,e):Cr("studio",void 0))}async function bc(){l.run.shipped&&await Cn(l.run);let t=wc();await mn("studio",ji,t)||(await Jg(t),await mn("studio",ji,t))}async function Jg(t){try{await Pn({file:t,version:null,text:G({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof y)||e.status!==409)throw e}cn("studios",t)}var _c=(t,e)=>Dt(t.file)+e;async function Vg(t){try{return ot((await ft(t)).text)!==void 0}catch(e){if(!(e instanceof y))throw e;return!1}}async function Yi(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Cn(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=_c(e,n);return mn("own_fats",Ni,await Vg(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Dt(a.file)===Dt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await yc(Ni,_c(e,"my.fats.json"),i);return W(t,"/own_fats",Bt(s)),mn("own_fats",Ni,s)}async function Lr(){l.run.shipped&&await Cn(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return mn("own_tips",Ui,xe(n));let o=Dt(l.run.file),i=(l.files?.tips??[]).find(c=>!c.shipped&&Dt(c.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await yc(Ui,`${o}my.tips.json`,s);return l.beside.studio?W("studio","/own_tips",Bt(a)):W("run",t,Bt(a)),mn("own_tips",Ui,a)}async function yc(t,e,n){let{file:o}=await ce({kind:t,name:e,text:G(n)});return cn(t.list,o),o}function vc(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(Bt(e));for(let i of nt)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&W(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&W("run",o,t.file)}var Co=[],Lo=()=>Co.at(-1);function Br(t){Co=[...Co,t],h({list_told:t.words}),E(t.words)}async function Tc(){let t=Lo();t&&(await t.undo(),Co=Co.slice(0,-1),h({list_told:""}),E("Undone"),await We())}var We=async()=>h({files:await Me()});async function Sc(t,e){let{$schema:n,...o}=JSON.parse((await ft(e.file)).text),i=`${e.name||e.file}, copy`,s={...o,name:i,...t.name==="run"?{id:crypto.randomUUID()}:{}},{file:a}=await ce({kind:t,name:t.new_name(Oo(t,s)),text:G(s),from:e.file});return await We(),Br({words:`Copied ${e.name||e.file}.`,undo:async()=>{await _r(a,!0)}}),a}var Rc=t=>/(\.(run|formula))?\.json$/.exec(t)?.[0]??"",Bo=t=>Bt(t).slice(0,-Rc(t).length||void 0),Pc=(t,e)=>Dt(t)+e+Rc(t),kc=t=>[l.run,...nt.map(e=>l.formulas[e])].find(e=>e?.file===t);async function Ac(t,e,n){let o={name:e.name,note:e.note,stem:Bo(e.file)};await xc(t,e.file,n),await We();let i=Pc(e.file,n.stem);Br({words:`Changed ${n.name||i}.`,undo:()=>xc(t,i,o)})}async function xc(t,e,{name:n,note:o,stem:i}){let s=kc(e),a=s??await Ot(t,e),{note:c,...d}=a.now,p=o?{...d,name:n,note:o}:{...d,name:n};if(G(p)!==G(a.now)&&(s&&Ie(),ht(a,p),await de(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let m=Pc(e,i);if(m===e)return;let{renamed_in:_}=await Au(e,m);s&&uc(s,m);for(let b of _){let w=kc(b);w&&await cc(w)}}async function Dc(t,e){let{removed:n}=await _r(t.file,e);l.run.file===t.file&&Fn(),await We(),Br({words:`Removed ${t.name||t.file}.`,undo:async()=>{await Du(n)}})}async function He(){for(let t of["pour","pipe"]){let e=$(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await qg(t,Ft(e,l.files?.formulas)):le(t,void 0)}}async function qg(t,e){if(l.formulas[t]?.file===e)return;let n=nt.map(o=>l.formulas[o]).find(o=>o?.file===e);if(le(t,n),!n)try{let o=await Er(e);le(t,o),N(o)&&lt("unwritten",{file:o}),o.theirs&&lt("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Er(t){let e=await Ot(On,t);return N(e)&&Ln(e),e}var Eo=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Wn(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:c,material:d}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(c),i(c)),colour:n.materials[d].pbrMetallicRoughness.baseColorFactor}))}function Oc(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:c,indices:d}=t;for(let p=0;p<d.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*d[p+_],w=3*d[p+(_+1)%3],R=c[b+i]-e,j=c[w+i]-e;if(R>0==j>0)continue;let re=R/(R-j),nn=[1e3*(c[b]+re*(c[w]-c[b])),1e3*s*(c[b+o]+re*(c[w+o]-c[b+o]))];R>0?m.push(nn):m.unshift(nn)}m.length===2&&a.push([m[0],m[1]])}return a}function Fc(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Io(t){let e=t.positions,[n,o,i,s,a,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),c=Math.max(c,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let d=n+(o-n)*.50137;return{loops:Fc(Oc(t,d)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*c,cut_y:-1e3*d}}function Cc(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>Fc(Oc(t,n+s*o,"level"))).reduce((s,a)=>Mc(a)>1.001*Mc(s)?a:s)}function Mc(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Ir(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],c)=>{let[d,p]=i[(c+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,d]:[s+(e-a)/(p-a)*(d-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var Lc=40,Kg=2e3,Wr=0;async function Bc(t){let e=await Fe({kind:"glb",gauge:t}),n=Wn(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Hn(t){let[e,n]=await Promise.all([Oe(t),Bc(t)]),o=Io(n);return{gauge:e,outline:o,above:Cc(n,o)}}async function Gg(t){let{pockets:e}=await Oe(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:Lc},(i,s)=>`${(n*(s+1)/Lc).toFixed(4)} mm`);return Oe({...t,depth:o})}function te(){Yg()}async function Yg(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Wr,n=Ft(t,l.files?.moulds);try{let[o,i]=await Promise.all([Gg({file:n}),Bc({file:n})]);e===Wr&&h({measured:{mould:n,gauge:o,outline:Io(i)},measuring_failed:void 0})}catch(o){if(e!==Wr)return;if(!(o instanceof y))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(te,Kg)}}var Hr=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],jr=()=>$t.flatMap(t=>l.beside[t]??[]),Ec=t=>t.filter(e=>e.theirs),Te=t=>Ec([...Hr(t==="apart"?["apart"]:["pour","pipe"]),...jr()])[0],Qi=()=>[l.run,...Hr(nt),...jr()].filter(t=>t.is_taken&&!t.theirs),Zi=()=>Ec([l.run,...Hr(nt),...jr()]);var Wo=()=>l.formulas.apart?"apart":"run",Ic=t=>h({dangers:{...l.dangers,[Wo()]:t}});function Wc(t){let e=t.cautions.filter(n=>n.severity==="danger");Ic(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Hc(t){t.lye_heavy&&Ic([{text:Z(t),is_of_heat:!1}])}var Qg=400,Zg=2e3,Xi=0;function Ho(){clearTimeout(Xi),Xi=window.setTimeout(()=>{ee()},Qg)}async function ee(){clearTimeout(Xi);let{run:t}=l;try{await de(t),N(t)&&!t.theirs&&t===l.run&&Ho()}catch(e){if(!(e instanceof y))throw e;e.may_pass&&(Xi=window.setTimeout(()=>{ee()},Zg))}}var jc=Promise.resolve();function jn(){let t=jc.then(Xg);return jc=t.catch(()=>{}),t}async function Xg(){for(let t of nt){let e=l.formulas[t];!e||!N(e)||e.theirs||(e.shipped&&t!=="apart"&&await Cn(l.run),await de(e))}for(let t of $t){let e=l.beside[t];e&&N(e)&&!e.theirs&&await de(e)}}function Nc(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Ft(String(n?.mould??""),l.files?.moulds);return{file:Dn("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...t_(e)}}}function t_(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var ne=new Map,jo=new Set,e_={changed:{},unreadable:[]},Nn=()=>new Set([...nt.flatMap(t=>l.formulas[t]??[]),...$t.flatMap(t=>l.beside[t]??[])]);async function Uc(){let t=n_(),e=new Set([...Nn()].map(({file:o})=>o));for(let o of ne.keys())!t.has(o)&&!e.has(o)&&ne.delete(o);for(let o of jo)t.has(o)||jo.delete(o);let n=[...t].filter(o=>!ne.has(o));for(let[o,i]of await zc(n))ne.has(o)||ne.set(o,i)}async function zc(t){let e=t.filter(o=>!jo.has(o)),n=e.length?await An(new Map(e.map(o=>[o,null]))):e_;return zr(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Nr=async t=>(await zc([t])).get(t)??null,Ur=()=>new Map([...ne].filter(([t])=>!jo.has(t)));function n_(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(xe(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(xe("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Nn()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Dt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of $t)t.delete(l.beside[o]?.file??"");return t}function Jc(t,{changed:e}){let n=Object.keys(e).filter(o=>ne.has(o)&&ne.get(o)===t.get(o));for(let o of n)ne.set(o,e[o]);return n}var zr=t=>t.forEach(e=>jo.add(e));function Vc(){return[...Nn()].flatMap(({file:t,version:e})=>{let n=ne.get(t)??e;return ne.delete(t),n===e?[]:[t]})}var qc=0,Jr=()=>qc;function Vr(t){++qc,h({is_old:!0,changed_beside:t})}var o_=1e3,i_=450,ts=!1,fn=!1,qr=0;function Y(){h({is_old:!0}),ts?fn=!0:Un()}async function Un(){if(ts){fn=!0;return}ts=!0,Kc(!1);try{do fn=!1,await s_();while(fn)}finally{ts=!1,Kc(!0),J()}}var Kc=t=>{document.documentElement.dataset.settled=String(t)};function Gc(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function s_(){let t=Gc();try{await jn(),await Uc(),t=Gc();let{apart:e}=l.formulas;if(Te(e?"apart":"run"))return h({is_old:!0});let n=Jr(),o=e?Nc(e.file):{file:l.run.file,run:l.run.now},i=await Bi(o);if(window.clearTimeout(qr),!t())return void(fn=!0);h({plan:i,planned:o,complaint:void 0}),Wc(i);let s=n===Jr();h({is_old:fn||!s}),s&&h({changed_beside:void 0})}catch(e){if(!(e instanceof y))throw e;if(!t())return void(fn=!0);r_(e)}}function r_(t){h({is_old:!0}),window.clearTimeout(qr);let e=()=>{h({complaint:t.complaint}),Hc(t.complaint)};l.complaint||!l.plan?e():qr=window.setTimeout(e,i_),t.may_pass&&window.setTimeout(Y,o_)}var Yc=t=>ke("GET",`/api/bench?run=${encodeURIComponent(t)}`),Qc=t=>xt("/api/bench/tick",t),Zc=t=>xt("/api/bench/weigh_cup",t),Xc=(t,e)=>xt("/api/bench/anew",{run:t,batch:e}),td=(t,e)=>xt("/api/bench/finish",{run:t,batch:e});var a_=1e4,Kr=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Kr);var es=[],zn=()=>`bench ${l.files?.folder??""}`;function oe(){try{return[...JSON.parse(localStorage.getItem(zn())??"[]"),...es]}catch{return es}}function ed(t){try{t.length?localStorage.setItem(zn(),JSON.stringify(t)):localStorage.removeItem(zn()),es=[]}catch{es=t}}var l_=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function nd(t){let e={...t,id:crypto.randomUUID(),tab:Kr,at:Date.now()};ed([...oe().filter(n=>!l_(n,e)),e])}var ns=t=>ed(oe().filter(e=>!t(e))),Gr=()=>oe().find(t=>t.tab===Kr||Date.now()-t.at>a_);var od=2e3,zt=t=>h({bench:{...l.bench,...t}}),u_=()=>zt({acts:oe()});addEventListener("storage",({key:t})=>{t===zn()&&u_()});function id(){let{file:t}=l.run;!t||l.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:oe()}}),Jn().then(Xr))}function os(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var No=0;async function Jn(){let{run:t}=l.bench,e=No;try{let n=await Yc(t);if(t!==l.bench.run)return;if(e!==No)return await Jn();sd(n)}catch(n){if(!(n instanceof y))throw n;if(t!==l.bench.run)return;zt({failed:Z(n.complaint)}),rd(n)&&setTimeout(()=>l.bench.failed!==void 0&&void Jn(),od)}}var sd=({batches:t,version:e,complaints:n=[]})=>zt({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),rd=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Vn=t=>l.bench.batches.find(e=>e.batch===t),Qr=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),qn=t=>Qr(t).length>0;function hn(t,e){let n=Qr(t).find(i=>i.key===e),o=Vn(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Zr(t){let e=Qr(t).find(n=>n.reading!==void 0);return(e?e.reading:Vn(t)?.weigh_cup)??""}function ad(t,e,n){let{run:o}=l.bench,s=Vn(t)!==void 0||!l.planned?void 0:G(l.planned.run);nd({run:o,batch:t,seen:e,text:s,...n}),zt({acts:oe(),chosen:t,told:void 0}),Xr()}var ld=(t,e,n,o)=>ad(t,e,{key:n,done:o}),ud=(t,e,n)=>ad(t,e,{reading:n||null}),Yr=!1;async function Xr(){if(!Yr){Yr=!0;try{await navigator.locks.request(zn(),c_)}finally{Yr=!1}oe().length&&setTimeout(()=>{Xr()},od)}}async function c_(){for(let t=Gr();t;t=Gr())if(!await d_(t))return}async function d_(t){let{id:e}=t;try{let n=await p_(t);return++No,ns(o=>o.id===e),m_(n,t.run),!0}catch(n){if(!(n instanceof y))throw n;return rd(n)?(zt({unsent:Z(n.complaint)}),!1):(await f_(t,n),!0)}}function p_({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let c={run:t,text:e,batch:n,seen:o};return i!==void 0?Qc({...c,key:i,done:s??!1}):Zc({...c,reading:a??null})}function m_(t,e){let n=oe();if(e!==l.bench.run)return zt({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);zt({acts:n,batches:i,unsent:void 0})}async function f_(t,{complaint:e}){++No,ns(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${Z(e)}.`;zt({acts:oe(),unsent:void 0,told:{batch:t.batch,words:n}}),E(n),Y(),await Jn()}async function Uo(t){let{run:e}=l.bench;await cd(t,async()=>{let n=await Xc(e,t);return ns(o=>o.run===e&&o.batch===t),n})}var ta=t=>cd(t,()=>td(l.bench.run,t));async function cd(t,e){let{run:n}=l.bench;try{let o=await e();if(++No,n!==l.bench.run)return;sd(o),zt({acts:oe(),told:void 0,chosen:t})}catch(o){if(!(o instanceof y))throw o;zt({told:{batch:t,words:Z(o.complaint)}})}}var dd=t=>zt({chosen:t,told:void 0}),pd=()=>zt({told:void 0});var zo=()=>h({own_fats:{}});function je(t){let e=Jo(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Jo(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Dt(e.file)+n,n].includes(o.file))return fd(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(md(i,"waiting"),h_(n,e.file).then(a=>md(i,a)),"waiting")}var md=(t,e)=>h({own_fats:{...l.own_fats,[t]:e}});async function h_(t,e){for(let n of new Set([Dt(e)+t,t])){let o=fd(await g_(n));if(o)return o}return"none"}var fd=t=>Array.isArray(t?.fats)?t.fats.map(__):void 0;async function g_(t){try{return ot((await ft(t)).text)}catch{return}}var __=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:$_(n)});function $_(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Kn=[],Vo;function is(){Kn.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Kn.push(t);Vo===void 0&&gd()}function hd(t){let e=l.own_moulds[t];return!e&&t!==Vo&&!Kn.includes(t)&&Kn.push(t),Vo===void 0&&Kn.length&&gd(),e}async function gd(){for(;(Vo=Kn.shift())!==void 0;){let t=Vo,e=await w_(t);h({own_moulds:{...l.own_moulds,[t]:e}})}}async function w_(t){try{let{pockets:e}=await Oe({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof y))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var wd=()=>h({own_tips:{}}),ea=!1;function na(){return!l.tips&&!ea&&(ea=!0,Iu().then(t=>h({tips:t}),bd).finally(()=>ea=!1)),l.tips??[]}function oa(t){let e=xe(t),n=l.beside.own_tips;if(n?.file===e)return $d(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(_d(e,[]),ft(e).then(({text:i})=>_d(e,$d(ot(i))),bd),[])}var _d=(t,e)=>h({own_tips:{...l.own_tips,[t]:e}});function $d(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function bd(t){if(!(t instanceof y))throw t}var ss=300,b_=5e3,Td=2e3,y_=500,yd=!1,qo=new AbortController,Sd=()=>qo.abort(),Rd=()=>document.visibilityState==="hidden";function Pd(){if(yd)return;yd=!0;let t=async()=>{qo=new AbortController;let e=await v_(qo).then(()=>Rd()?b_:ss,()=>qo.signal.aborted?ss:Td);await vd(ss),await vd(e-ss,qo.signal),t()};t()}var vd=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),Ad=()=>[l.run,...l.mould?[l.mould.open]:[],...Nn()],Dd=()=>new Map(Ad().flatMap(dc)),kd=()=>JSON.stringify([[...Dd().keys()],[...Ur().keys()],os()?.run??null]);async function v_(t){let[e]=Vc();e!==void 0&&await xd(e);let[n,o]=[Dd(),Ur()],i=new Map([...o,...n]),s=[...o].every(([d,p])=>i.get(d)===p),a=s&&!Rd()?await k_(i,t):await An(i,os());a.bench!==void 0&&await Jn(),zr(a.unreadable),await x_(n,a);let[c]=Jc(o,s?a:await An(o));c!==void 0&&await xd(c)}async function k_(t,e){let[n,o]=[kd(),Date.now()],i=window.setInterval(()=>{(kd()!==n||Date.now()-o>$r+Td)&&e.abort()},y_);try{return await Fu(t,os(),e.signal)}finally{window.clearInterval(i)}}async function x_(t,{changed:e}){let n=Nn();for(let o of Ad()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await T_(o,i):await Dr(o,i,Nr,()=>{}))}}async function T_(t,e){await Dr(t,e,Nr,()=>Vr(t.file))&&(zo(),Y())}async function xd(t){Vr(t),await Mr(),zo(),wd(),h({measured:void 0}),te(),is(),await Promise.all([He(),In(!0)]),Y()}var Md="examples/spring_cups.run.json";async function Od(t){let e=await Me();h({files:e});let n=e.runs.some(o=>o.file===t.run);try{await Ne(n?t.run:S_(e),n||!t.run?t.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Fd(){let[t,e]=await Promise.all([Bu(),Eu()]);h({fats:t,catalogue:e})}function S_(t){let e=localStorage.getItem("run"),n=i=>t.runs.some(s=>s.file===i);return t.open?t.open:e&&n(e)?e:t.runs.find(i=>!i.shipped)?.file??(n(Md)?Md:t.runs[0]?.file??"")}async function Ne(t,e="weigh"){if(!t)return h({view:"runs"});l.run.file&&N(l.run)&&await ee();let n=await Ot(un,t);Fn(n),h({view:e}),localStorage.setItem("run",n.file),N(n)&&(Ln(n),Ho());let o=Un().finally(te);await Promise.all([o,He(),In()]),Pd()}var R_=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function rs(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};R_()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await ce({kind:un,name:Ce(t.name,".run.json"),text:G(o)});ut("set-up pour"),await Ne(i,"set-up")}var Ko=["runs","formulas","moulds"],Go=["weigh","set-up","watch","money","mould","print"],Jt=t=>Ko.some(e=>e===t),pe=t=>Go.some(e=>e===t);var P_="examples/plain_bars.run.json";function Vt(t){zo();let e=pe(l.view)?l.view:l.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Yo(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Vt(e);l.run.file||await Ne(P_,"reading"),await A_(t)}async function A_(t){let e={past:l.past,future:l.future};h({run_steps:e,past:[],future:[]});try{le("apart",await Er(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Vt("apart"),Un()}async function D_(){let t=l.formulas.apart!==void 0;return await as()?(h({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function as(){return l.formulas.apart?await M_()?(Un(),!0):!1:!0}async function M_(){try{await jn()}catch(e){if(!(e instanceof y))throw e;return h({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return E("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;le("apart",void 0);let t={...l.dangers,apart:[]};return h({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Cd(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&le(o,void 0);n&&await as(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function ia(t){let{file:e}=l.formulas.apart;await D_()&&W("run",`/${t}/formula`,e)}var O_=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Ld=t=>Ed(O_(t));async function Bd(t,e){let{$schema:n,...o}=JSON.parse((await ft(t)).text);await Ed({...o,name:e},t)}async function Ed(t,e){let n=Ce(String(t.name),".formula.json"),{file:o}=await ce({kind:On,name:n,text:G(t),from:e});await Yo(o)}var F_=30,C_=1200,Id=0,sa=!1,ra=!1;function la(t,e,n){let o=e==="mesh"?l.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ca()}var me=()=>h({mould:void 0,mesh:void 0}),Gn=(t,e,n)=>la(Oo(Mt,t),e,n);async function Hd(t,e){let n=await Ot(Mt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&v(n,{now:{...n.now,name:""}}),la(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function jd({id:t,file:e,text:n}){let o=e?await Ot(Mt,e,t):Oo(Mt,JSON.parse(n),t);la(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var B=()=>l.mould,D=()=>B().open.now;function ct(t,e){L_(t),ht(B().open,C(D(),t,e))}var aa="",Wd=0;function L_(t){let e=performance.now(),{past:n}=B();(t!==aa||e-Wd>C_||!n.length)&&v(B(),{past:[...n,D()]}),v(B(),{future:[]}),[aa,Wd]=[t,e]}function Nd(){let{past:t,future:e,open:n}=B(),o=t.at(-1);o&&(v(B(),{past:t.slice(0,-1),future:[...e,n.now]}),zd(o,"Undone"))}function Ud(){let{past:t,future:e,open:n}=B(),o=e.at(-1);o&&(v(B(),{past:[...t,n.now],future:e.slice(0,-1)}),zd(o,"Redone"))}function zd(t,e){aa="",h({typed:void 0}),ht(B().open,t),E(e)}var B_=["name","note","owned","unmould_after"];function ua(t){let e=D(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!B_.includes(a)))&&v(B(),{is_old:!0});let i=n.some(a=>B().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(B().is_old||i||s)&&ca()}function ca(){clearTimeout(Id),Id=window.setTimeout(()=>{E_()},F_)}async function E_(){if(sa)return void(ra=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!Zt(e,"shape")&&!Zt(e,"mesh"))){if(Mo(e).length)return v(t,{complaint:void 0});sa=!0;try{let n=Mt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Hn(o);t.open.now===e&&v(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;t.open.now===e&&da(n)}finally{sa=!1,ra&&ca(),ra=!1}}}function da(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;v(B(),{complaint:{field:Hi(D(),e),line:a,keep:i&&{...i,at:Hi(D(),i.at)},about:s===void 0?void 0:Hi(D(),`${e}/${s}`)}})}var ls=t=>Object.values(l.formulas).includes(t),Qo=t=>Object.values(l.beside).includes(t),Jd=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function I_(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&te(),Jd(t)!==Jd(e)&&He(),Y(),Ho()}var W_=Y;function H_(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(Bt(e))?C(s,o,t.file):s;Fr(l.run,i),i(l.run.now)!==l.run.now&&ht(l.run,i(l.run.now))}}async function j_(t){t===l.run?(Fn(),localStorage.removeItem("run"),h({view:"runs"})):t===l.mould?.open?me():Qo(t)?$c(t):await Cd(t),await We(),l.run.file&&Y()}function Vd(){Qt("edited",({file:t,before:e})=>{t===l.run?I_(e,t.now):ls(t)||Qo(t)?W_():t===l.mould?.open&&ua(e)}),Qt("gave_way",({file:t})=>{if(t===l.mould?.open)return ua();t===l.run&&(te(),He().then(Y)),Y()}),Qt("left_deleted",({file:t})=>{j_(t)}),Qt("unwritten",({file:t})=>{t===l.run?ee():(ls(t)||Qo(t))&&Y()}),Qt("conflict",({file:t})=>{(ls(t)||Qo(t))&&h({is_old:!0})}),Qt("renamed",({file:t})=>{t===l.run&&(localStorage.setItem("run",t.file),te(),He()),Y()}),Qt("copied",({file:t,from:e})=>{ls(t)&&H_(t,e),Qo(t)&&vc(t,e),t===l.run&&(localStorage.setItem("run",t.file),In().then(Y))})}var gn=r`<span aria-hidden="true">⚠</span> Danger`;function Zo(t,e="",n){let o=Ue(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${gn}</strong> ${i}</p>`)}
  </div>`:u}function Ue(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function qd(){let t=Jt(l.view)||Wo()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Kd=()=>qd().length>0;function Gd(){let t=qd(),e=z_();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${gn}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${N_()?r`<button type="button" @click=${U_}>To the question</button>`:u}
          </div>`:u}
  </section>`}var N_=()=>Te(Wo())!==void 0&&!Jt(l.view);function U_(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function z_(){if(!l.run.file||l.view==="reading")return"";let t=Te(Wo());return t&&pn(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}function Yn(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:c,pipe:d,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:c,pipe:d,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:d?.whippings??[],whole:t}}var it=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,J_=t=>t.cut?["loaf","loaves"]:["cast","casts"];function fe(t,{pieces:e,casts:n}){let o=t.cut?it(e,"bar"):it(e,"piece");return n===e?o:`${o} from ${it(n,...J_(t))}`}var V_=t=>t===1?"once":`${t} times`,pa=t=>t.batches.length>1,wt=t=>t.pieces.batches>1;function Xo(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function tt(t){return wt(t.whole)?`one batch, ${fe(t.whole,t.batch)}`:""}var Yd=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function ma(t,e){return Yd(t)?`${fe(t.whole,e)}${e.count>1?`, whipped ${V_(e.count)}`:""}`:""}function us(t,e){let n=ma(t,e);return n&&`one whipping: ${n}`}var Qd=t=>wt(t.whole)||Yd(t),cs=(t,e)=>`${it(t,"filling")} of ${it(e,"cavity","cavities")}`;var Zd=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,Xd={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Zd}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Zd}<path class="measure" d="M20 10h80" />`}};function tp(t,e=""){let{name:n,words:o,drawing:i}=Xd[t],s=`term ${t} ${e}`,a=l.open.has(s);return r`<span class="term"
    ><button
      type="button"
      aria-expanded=${a?"true":"false"}
      aria-label="What ${n} means"
      @click=${()=>ue("open",s)}
    >
      <span aria-hidden="true">?</span></button
    >${a?r`<span class="term-words" role="note"
            >${i?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${i}</svg>`:u}<span><b>${n}</b>: ${o}</span></span
          >`:u}</span
  >`}var ps=28.349523125,ip=25.4,q_=29.5735295625;function he(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function x(t,e){return K_(he(t,e))}var K_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function ge(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${he(t,e)} %`:fa(t)?"just below 0 %":"0.0 %"}var fa=t=>t<0||Object.is(t,-0),sp=t=>Math.abs(t-Math.round(t))<1e-6;function ep(t){return t?[0,1,2,3].find(e=>sp(t*10**e))??3:0}function np(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function G_(t){return[0,1,2].find(e=>t.every(n=>sp(n*10**e)))??3}function ms(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function bt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-G_([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var rp=.001;function ds(t,e,n,o,i=1e-9){let s=10**n;return he(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var op=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Y_(t){if(!op.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return op.find(e=>Math.abs(e*ps-t)<.6*rp)}function et(t,e,n="nearest"){let o=e.scale_step_g||.1,i=Y_(o),s=Math.min(.6*rp,o/2),a=i?ds(e.g,1,np(o),n):ds(e.g,1,ep(o),n,s),c=i?ds(e.g,ps,ep(i),n,s):ds(e.g,ps,np(o/ps),n),[d,p]=[`${e.g_text??a} g`,`${e.oz_text??c} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,d]:ms(t,d,p)}var O=(t,e,n=1,o="nearest")=>et(t,{g:e,scale_step_g:10**-n},o);function _t(t,e,n=1){return ms(t,`${he(e,n)} ml`,`${he(e/q_,2)} US fl oz`)}function pt(t,e){return ms(t,`${x(e,1)} mm`,Q_(e))}function Q_(t){let e=Math.round(Math.abs(t)/ip*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var ha=([t])=>t,T=([t,e])=>e?`${t} (${e})`:t;function ap(t,e){return ms(t,`${he(e,0)} \xB0C`,`${he(e*1.8+32,0)} \xB0F`)}function Qn(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??ip;return n*o}function _e(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Zn=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function Xn(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function ze(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}var lp=t=>t.goes_into==="lye",up=({role:t})=>t==="alkali",Z_=t=>up(t)?"down":"nearest",_n=(t,e)=>et(t,e,Z_(e));function fs(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>lp(i)),n=({one:i})=>i.role==="water",o=({one:i})=>up(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function cp(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!lp(e))}function to(t,e=()=>{}){if(!t.theirs)return u;let n=pn(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{sc(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>rc(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>ic(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function eo(t){if(t.theirs||!t.set_aside||Gi(t)&&!t.is_taken)return u;let e=()=>{Gi(t)&&Ie(),ac(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>nc(t)}>Close</button>`:u}
    </div>
  </section>`}var Se={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},hs=t=>(...e)=>({_$litDirective$:t,values:e}),no=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:X_}=hu,dp=t=>t;var mp=t=>t.strings===void 0,pp=()=>document.createComment(""),oo=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(pp(),i),a=o.insertBefore(pp(),i);n=new X_(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,c=a!==t;if(c){let d;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(d=t._$AU)!==a._$AU&&n._$AP(d)}if(s!==i||c){let d=n._$AA;for(;d!==s;){let p=dp(d).nextSibling;dp(o).insertBefore(d,i),d=p}}}return n},Je=(t,e,n=t)=>(t._$AI(e,n),t),t$={},gs=(t,e=t$)=>t._$AH=e,fp=t=>t._$AH,_s=t=>{t._$AR(),t._$AA.remove()};var H=hs(class extends no{constructor(t){if(super(t),t.type!==Se.PROPERTY&&t.type!==Se.ATTRIBUTE&&t.type!==Se.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!mp(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Pt||e===u)return e;let n=t.element,o=t.name;if(t.type===Se.PROPERTY){if(e===n[o])return Pt}else if(t.type===Se.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Pt}else if(t.type===Se.ATTRIBUTE&&n.getAttribute(o)===e+"")return Pt;return gs(t),e}});var $n,ti=[],ei=()=>$n!==void 0;function It(t,e,n,o){if(!$n||$n.some(s=>s.id===n))return;let i=ti.flatMap(({part:s})=>s??[]);$n.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:ti.flatMap(({fold:s})=>s??[])})}function qt(t,e){ti.push(t);try{return e()}finally{ti.pop()}}var hp=()=>{},gp=t=>{hp=t},$s,e$=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function io(){if(ei())return[];let t=e$();return $s?.of.length===t.length&&t.every((n,o)=>n===$s.of[o])||($s={of:t,wanted:n$()}),$s.wanted}function n$(){$n=[],ti=[];try{return hp(),$n}finally{$n=void 0}}function _p(t){l.touched.has(t)||h({touched:new Set(l.touched).add(t)})}function $p(t,e){if(l.has_asked)return!1;let n=io().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var st=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Kt(t,e){let n=l.complaint;if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Re(t)&&!$p(t,n.field)?Z(n):void 0}function yt(t,e){return l.complaint?.field===e?Kt(t,e):void 0}function Re(t){let e=l.complaint,n=Bn(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function o$(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function wn(){let t=l.complaint;if(t)for(let e of["run",...nt,...$t])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Kt(e,n)&&document.getElementById(st(e,n));if(o)return o}}function i$(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=s$(t,n);return o&&Zn(e)?`${e.trim()} ${o}`:e}function s$(t,e){return _e(g(e,t.at))||t.unit||""}var Wt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,ga=!1;addEventListener("pointerdown",()=>ga=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>ga=!1,!0);var r$=()=>h({typed:void 0});function _a(t){let{id:e}=t.target,n=()=>{r$(),_p(e)};ga?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var a$=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,l$=({unit:t=""},e)=>[t.replace("cm2","cm\xB2"),e?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=st(e,t.at),o=g(e,t.at),i=a$(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),c=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);c&&It(e,t.at,n,t.label);let d=Kt(e,t.at),p=b=>{let w=b.target.value;h({typed:{key:n,text:w}});let R=i$(t,w);W(e,R===void 0&&t.takes_part?o$(e,t.at):t.at,R)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${d?"wants":""}"
  >
    <label for=${n} data-said=${l$(t,c)}>${t.label}</label>
    <input
      id=${n}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${H(a)}
      @input=${p}
      @blur=${_a}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${d?"true":"false"}
      aria-describedby=${[d||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Wt(n,d,_)}
  </div>`}function ws(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var U=t=>()=>document.getElementById(t),mt=(t,e)=>U(st(t,e)),ni=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),u$=()=>document.activeElement;function dt(t){requestAnimationFrame(()=>ws(t()))}function so(t,e,n,o=u$){E(e),gc(t,n),dt(o)}function L(t,e,n,o,i){so(t,e,s=>C(s,n,o),i)}var Ve=(t,e,n)=>`${st(t,e)}-${n}`;function I(t,e){let n=yt(t,e);return n?r`<p id=${st(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var wp=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function rt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${wp(e,n,o)}</div>`}function k({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:c,then:d,hint:p,optional:m}){let _=i?Ve(t,n,e.replaceAll(/\W+/g,"-")):st(t,o),b=s===void 0&&!m;b&&It(t,o,_,e);let w=i?void 0:yt(t,o),R=j=>{if(j===s)return;let re=a.find(([nn])=>nn===j)[1];L(t,`${e}: ${re}`,n,c(j),d&&mt(t,d(j)))};return r`<div class="field asked ${w?"wants":""}">
    <p class="question" id="${_}-label" data-said=${b?"required":u}>${e}</p>
    <div
      class="choice"
      role="group"
      id=${_}
      tabindex="-1"
      aria-labelledby="${_}-label"
      aria-describedby=${w||p?`${_}-said`:u}
    >
      ${wp(s,a,R)}
    </div>
    ${Wt(_,w,p)}
  </div>`}function $a(t,e,n,o){let i=st("run",t),s=yt("run",t),a=()=>L("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${Wt(i,s)}`}function Tt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:c}){let d=st(e,n),p=Kt(e,n),m=a??F(e,n);!m&&!s&&It(e,n,d,t);let _=!m||o.some(([R])=>R===m),b=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${d} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${d}
      aria-required=${s?u:"true"}
      @change=${R=>{let j=R.target.value;c?c(j):W(e,n,j||!s?j:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
    >
      ${b.filter(([R])=>R||s||!m).map(([R,j])=>r`<option value=${R} .selected=${H(R===m)}>${j}</option>`)}</select
    >${Wt(d,p)}
  </div>`}function ro(t,e,n=[]){let o=Ft(F("run",e),n);return Tt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Pe({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let c=Ve(t,e,"part"),d=Ve(t,e,"add"),p=()=>qt({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${d} @click=${()=>L(t,`${o} added`,e,s,ni(c))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>L(t,`${o} removed`,e,void 0,U(d))}
      >
        Remove
      </button>
    </div>
    ${I(t,e)} ${p()}
  </div>`}var bp=(t,e)=>`folded ${t} ${e}`,ao=(t,e)=>ut(bp(t,e));function A({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=bp(t,e);if(ei())return r`${qt({fold:a},s)}`;(i||n.some(p=>Kt(t,p)))&&ut(a);let c=l.open.has(a);return r`<details .open=${c}>
    <summary @click=${p=>{p.preventDefault(),ue("open",a)}}>${o}</summary>
    ${c?r`<div class="folded">${s()}</div>`:u}
  </details>`}var S=({of:t="run",at:e})=>gt(t,e),z=({of:t="run",at:e},n)=>Ve(t,`${e}/${n}`,"item"),bs=({of:t="run",at:e},n,o)=>Ve(t,`${e}/${n}`,o),c$=({of:t="run",at:e})=>st(t,e);function oi(t,e,n,o){let{of:i="run",at:s,stays:a,and:c=d=>d}=t;so(i,e,d=>c(C(d,s,n.length||a?n:void 0),n.length),o)}function q(t,e,n){let o=S(t);oi(t,`${n} added`,[...o,e],ni(z(t,o.length)))}function d$(t,e,n){let o=S(t).filter((a,c)=>c!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);oi(t,`${n} removed`,o,s?U(bs(t,i,"drop")):mt(t.of??"run",t.at))}function p$(t,e,n,o){let i=[...S(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",d=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;oi(t,`${o} moved ${a}`,i,U(bs(t,e+n,d)))}function Q(t,e,n){let o=S(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(c,d,p)=>r`<button
      type="button"
      id=${bs(t,e,d)}
      ?disabled=${p}
      aria-label="${n} ${d}"
      @click=${()=>p$(t,e,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${bs(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>d$(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function K(t,e,n){let o=c$(t),i=yt(t.of??"run",t.at);return r`${Wt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}function wa(t){let e=F(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${g$(t)}
    ${A({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var m$=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],yp={after:"",mass:""},vp=3,f$={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:vp},()=>yp)}}};function h$(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function g$(t){let e=h$(t);return r`${k({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:m$,puts:o=>({...X(t,"",["drying","water_lost_in_cure"]),...f$[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?_$(t):u}`}function _$(t){let e={of:t,at:"/drying/weighings",least:vp};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(e).map((n,o)=>r`<div class="row named" id=${z(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${Q(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${K(e,"One more weighing",()=>q(e,yp,"weighing"))}`}var $$=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],ys=t=>je(t).map(e=>[e.id,e.name]),kp=["unsaid","Not given"],xp=["none","Holds none"],Tp=t=>t===void 0?"unsaid":t==="none"?"none":"some",w$=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Sp(t,e){return ba(t,`${e}/contains_fat`,[kp,xp,["some","Holds fat"]],ys(t))}function ba(t,e,n,o){let i=Tp(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${k({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:w$({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${Tt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var b$=[kp,xp,["some","Holds acid"],["typed","By what it takes up"]],y$={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function ya(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Tp(g(t,n));return r`${k({of:t,question:"Acid in it",at:n,chosen:o,answers:b$,puts:i=>y$[i]})}
  ${o==="some"?r`<div class="row">
          ${Tt({label:"Which acid",of:t,at:`${n}/acid`,answers:$$.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?va(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function va(t,e,n){let o=g(t,e)===!0?"yes":"no";return k({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Pp={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Ap(t,e){let n=Jo(t);if(!Array.isArray(n)||!n.some(c=>c.id===e))return u;let i=gt("own_fats","/fats").findIndex(c=>c.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{v$(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return A({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>qt({part:F("own_fats",`${a}/name`)||"Your own fat"},()=>x$(a))})}async function v$(t,e){await Yi(t),ao("own_fats",e);let n=gt("own_fats","/fats").findIndex(o=>o.id===e);dt(U(`f-own_fats-fats-${n}-name`))}var k$=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function x$(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${I("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${k({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:F("own_fats",`${t}/kind`)||void 0,answers:k$,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${T$(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${A({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>S$(t)})}`}function T$(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${k({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function S$(t){let e=(o,i,s,a)=>{let c=`${t}/${o}`,d=g("own_fats",c)!==void 0,p=()=>L("own_fats",`${i}: ${d?"left out":"added"}`,c,d?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${d?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${d?"Leave out":"Add"}
        </button>
      </div>
      ${d?r`${I("own_fats",c)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${R$(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var Rp=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function R$(t){let e=Object.keys(g("own_fats",t)??{}),n=Rp.filter(([a])=>!e.includes(a)),o=a=>Rp.find(([c])=>c===a)?.[1]??a,i=a=>`${t}/${At(a)}`,s=a=>{let c=Array.isArray(g("own_fats",i(a))),d=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${c?r`${d(0,"lowest")} ${d(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>L("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${Tt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&L("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}var P$=["tsp/lb","tbsp/lb","tsp/kg"],vs=["%","g/kg",...P$].flatMap(t=>[`${t} of fats`,`${t} of batter`]),Mp=[...vs,"% of finished soap","g/kg of finished soap"];function Dp(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function ks(t,e,n,o,i=!1){let s=st(t,e),[a,c]=Dp(F(t,e),o),d=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&c)&&It(t,e,s,a.trim()?`${n}: of what`:n);let m=Kt(t,e),_=(w,R)=>{let j=`${w.trim()} ${R}`.trim();W(t,e,i&&!w.trim()?void 0:j),J()},b=w=>{let R=w.target.value,[j,re]=Dp(R,o);h({typed:{key:s,text:R}}),_(j,re||c)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${H(d)}
        @input=${b}
        @blur=${_a}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(d,w.target.value)}
      >
        <option value="" .selected=${H(c==="")}>of what?</option>
        ${o.map(w=>r`<option value=${w} .selected=${H(w===c)}>${w}</option>`)}
      </select>
    </div>
    ${Wt(s,m)}
  </div>`}function A$(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var D$=.01+1e-9;function xs(t,e){let{sum:n,unread:o}=A$(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=D$?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var Op=(t,e)=>je(t).find(n=>n.id===e)?.name??e,ii=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),Ts=t=>S(ii(t));function Sa(t){let e=Ts(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>M$(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?xs("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:It(t,"/fats",st(t,"/fats"),"The fats")}
    ${n?Cp(t):K(ii(t),"Add a fat",()=>Fp(t,e.length))} ${H$(t)}
  </section>`}function M$(t,e,n){let o=`/fats/${e}`,i=Op(t,String(n[e].fat??""))||"Which fat?",s=yt(t,`${o}/fat`)??yt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${z(ii(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${st(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?ka():Fp(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${Q(ii(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?Cp(t):u}
    ${Ap(t,String(n[e].fat??""))}
    ${A({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${L$(n[e])}`,body:()=>I$(t,e)})}
  </li>`}function Fp(t,e){h({picking:{of:t,row:e,text:""}}),dt(U("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function ka(){let t=l.picking;h({picking:void 0}),t&&dt(mt(t.of,t.row<Ts(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function xa(t,e){let{row:n}=l.picking,o=Ts(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};oi(ii(t),`${Op(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],mt(t,`/fats/${n}/share`))}var si=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Ta(t,e){let n=si(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>si(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Cp(t){let{row:e,text:n}=l.picking,o=Ts(t).map(m=>m.fat),i=O$(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),c=m=>{h({picking:{of:t,row:e,text:m.target.value}})},d=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,b=s[(_+s.length)%s.length];b&&(h({picking:{of:t,row:e,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&ka(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),d(m.key==="ArrowDown"?1:-1));let _=s.find(w=>si(w.name)===si(n.trim())),b=a??(s.length===1?s[0]:_);m.key==="Enter"&&b&&xa(t,b.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${c}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${ka}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,b=Ta(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>xa(t,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{F$(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function O$(t,e){let n=je(t).filter(a=>Ta(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(c=>Ta(a,c)!==void 0).length,s=Math.max(...je(t).map(i));return s?je(t).filter(a=>i(a)===s):[]}async function F$(t,e){if(!await Yi(t))return;let o=e.trim(),i=C$(o,[...l.fats,...gt("own_fats","/fats")]),s=gt("own_fats","/fats").length;W("own_fats",`/fats/${s}`,{...Pp,id:i,name:o}),xa(t,i),ao("own_fats",i),dt(mt("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function C$(t,e){let n=si(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}function L$(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var B$=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],E$={published:void 0,one:"",range:{low:"",typical:"",high:""}};function I$(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(c,d)=>f({label:c,of:t,at:d,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${k({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:B$,puts:c=>E$[c],hint:W$(t,F(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?va(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function W$(t,e){let n=je(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function H$(t){let e=Jo(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=F(t,"/own_fats");return A({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var j$=t=>nt.includes(t);function Ss(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:io().some(({of:e,at:n})=>Re(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function ri(){let t=l.complaint?io():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>N$(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function N$({of:t,id:e,folds:n}){for(let o of n)ut(o);h({has_asked:!0}),j$(t)?(l.view!=="formula"||l.formula_of!==t)&&Vt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>dt(U(e)))}var Lp="danger-of-superfat";function Ra(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",described_by:Ue(t).length?Lp:void 0})}
    </div>
    ${Zo(t,Lp)} ${U$(t)} ${G$(t,e)}
  </section>`}function U$(t){let e=gt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${k({of:t,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>z$(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>J$(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${xs("The two",e.map(i=>i.share))}
        </p>`:u}`}function z$(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function J$(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=yt(t,i)??yt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${A({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${V$(e.purity_range)}`,body:()=>q$(t,i)})}
  </div>`}var V$=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function q$(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${k({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var K$={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function G$(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(K$);return r`${k({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:Q$(e)})}
    <div class="row">${n.map(s=>Y$(t,s))}</div>`}function Y$(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function Q$(t){if(!(!t||l.is_old))return`It now makes a strength of ${x(t.lye_strength_percent,1)} %; ${x(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${x(t.water_percent_of_fats,1)} % of the fats.`}function qe(t,e,n){let o=Z$(t,e);return A({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${tw(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Bp(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>ew(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function Z$(t,e){let n=gt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Pa={name:"",share:""},X$={unsaid:void 0,one:"",many:[Pa]};function tw(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...Pa,name:o}]:X$[a];return r`${k({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Bp(t,e,"INCI name","One more INCI name")}`:u}`}function ew(t,e,n){return k({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Bp(t,e,n,o,i){let s={of:t,at:e};return r`${S(s).map((a,c)=>r`<div class="row named" id=${z(s,c)}>
        ${f({label:`${n} ${c+1}`,of:t,at:`${e}/${c}/name`})}
        ${f({label:`Share ${c+1}`,of:t,at:`${e}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${c}`,c)??u} ${Q(s,c,String(a.name||`${n} ${c+1}`))}
      </div>`)}
  ${K(s,o,()=>q(s,Pa,n))}`}var nw=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:mw},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:aw},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:lw},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:uw}];function Aa(t){return nw.map(e=>{let n={of:t,at:`/${e.list}`},o=S(n),i=(s,a)=>r`<li class="formula-row" id=${z(n,a)}>
        ${iw(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${K(n,e.add,()=>q(n,ow(e),e.add.replace("Add ","")))}
    </section>`})}function ow(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function iw(t,e,n,o,i){let s=`/${e.list}/${i}`,a=yt(t,s),c=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:ks(t,`${s}/rate`,"How much",vs)}
      ${Q(n,i,c)}
    </div>`}function Ep(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return k({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function Ip(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${Ep(t,e,rw,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?k({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:sw,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var sw=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],rw=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Da(t,e,n){let o=(a,c,d)=>a?`${c}${String(a)}${d}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return A({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${ks(t,`${e}/limit`,"The most that the supplier's document allows",Mp,!0)}`})}function Ma(t,e,n,o){let i=(a,c)=>a===void 0?"":a==="none"?`no ${c}`:c,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return A({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Sp(t,e)} ${o?ya(t,e):u}`})}var Rs=(t,e,n)=>qe(t,e,String(n.name||"it"));function aw(t,e,n){return r`${Ip(t,e,!0)}
    <div class="folds">${Ma(t,e,n,!0)} ${Da(t,e,n)} ${Rs(t,e,n)}</div>`}function Wp(t,e,n){return A({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Ip(t,e,!1)})}function lw(t,e,n){return r`<div class="folds">
    ${Da(t,e,n)} ${Rs(t,e,n)} ${Wp(t,e,n)} ${Ma(t,e,n,!1)}
  </div>`}function uw(t,e,n){return r`${dw(t,e)}
    <div class="folds">
      ${Da(t,e,n)} ${Rs(t,e,n)} ${Wp(t,e,n)} ${Ma(t,e,n,!0)}
    </div>`}var cw=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function dw(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${k({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${Tt({label:"Which oil",of:t,at:`${n}/fat`,answers:ys(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${k({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:cw,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var pw=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function mw(t,e,n){let o=(i,s,a)=>A({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${hw(t,e,n)}
    ${Ep(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${_w(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>fw(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>ya(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Rs(t,e,n)}
    </div>`}function fw(t,e){let n=g(t,e)===!0?"ice":"liquid";return k({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function hw(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...X(t,e,["replaces","rate"]),[s]:""});return r`${k({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:gw,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?ks(t,`${e}/rate`,"Rate",vs):u}`}var gw=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function _w(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(c,d)=>f({label:c,of:t,at:`${n}/${d}`,unit:"%",short:!0});return r`${k({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${ba(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...ys(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${Tt({label:"Built-in figures of",of:t,at:n,answers:pw.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var Oa=!1;function Hp(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!Oa&&ww(),{workings:$w(n?.workings,t),complaint:n?.complaint,is_old:o}}function $w(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function ww(){let{plan:t,planned:e}=l;if(!(!t||!e)){Oa=!0;try{let{how:n}=await Cu(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{Oa=!1}}}function P({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a}){let c=l.open.has(t),d=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?d:u}
      @click=${()=>ue("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${c?r`<div class="sum" id=${d}>${i?jp(i):Fa(o)}</div>`:u}
  </div>`}var bn=(t,e,n)=>P({key:t,label:e,shown:["",""],of:n});function Fa(t){let{workings:e,complaint:n,is_old:o}=Hp(t);return e.length?r`<div class=${o?"old":""}>${e.map(jp)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function jp({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:c,value:d,from:p})=>r`<tr>
              <th scope="row">${c}</th>
              <td>${d}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var yn="/pipe/beads",Ae=`${yn}/tip`,bw={of:"run",at:Ae},$e={at:`${yn}/moves`,in_order:!0},Ca="\0own",Jp={tip:"",bead_to_opening:"",moves:[]},ie=(t,e)=>({name:t,label:e,kind:"length"}),Np={name:"count",label:"How many",kind:"count"},Up=ie("circle_radius","Radius of their circle"),La={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[ie("diameter","Diameter"),ie("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[ie("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},ie("start_radius","Radius at the start"),ie("end_radius","Radius at the end"),ie("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[ie("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Np,Up,ie("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Np,Up,ie("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[ie("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Vp(t){return r`${vw()} ${Ba()?Yp(bw):Tw()}
    ${f({label:"Bead \xF7 tip opening",at:`${yn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S($e).map((e,n)=>Mw(e,n,t))}</div>
    ${Cw()}`}var Ba=()=>typeof g("run",Ae)=="object",qp=()=>String(g("run",`${yn}/own_tips`)??g("studio","/own_tips")??"");function yw(){let t=qp(),e=t?oa(t):[];return g("run",`${yn}/own_tips`)===void 0?[...e,...na()]:e}function vw(){let t=n=>n===Ca?L("run","a tip of your own",Ae,{name:"",round:{radius:""}},Gp):W("run",Ae,n),e=yw().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${Tt({label:"Tip",at:Ae,answers:[...e,[Ca,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Ba()?Ca:void 0})}
  ${Ba()?u:A({name:"tips",pointers:[`${yn}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${yn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var Kp=Ve("run",Ae,"own"),Gp=ni(Kp);async function kw(){let t=g("run",Ae);if(!await Lr())return;let e=gt("own_tips","/tips"),n=xw(String(t.name).trim()||"My tip",e);En([["own_tips",o=>C(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>C(o,Ae,n)]]),E(`${n} kept in ${l.beside.own_tips.file}`)}function xw(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...na()].some(i=>i.name===o))return o}}function Tw(){let t=F("run",Ae),e=qp();if(!t||!e||!oa(e).some(o=>o.name===t))return u;let n=gt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{Lr()}}>Change this tip of my own</button>`:Yp({of:"own_tips",at:`/tips/${n}`})}var zp=[["round","Round"],["star","Star"],["outline","Another outline"]],Ps={x:"",y:""},Sw={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Ps,Ps,Ps]};function Yp({of:t,at:e}){let n=zp.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...X(t,e,n),[s]:Sw[s]});return r`<div class="part" id=${Kp} role="group" aria-label="My own tip">
    ${I(t,e)} ${Rw({of:t,at:e})}
    ${k({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:zp,puts:i})}
    ${o?Aw({of:t,at:e},o):u}
    ${A({of:t,name:"hand",pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>Pw({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{kw()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var Rw=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${F(t,`${e}/name`)}</p>`;function Pw({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>L(t,"correction removed",n,void 0,Gp)}>
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function Aw(t,e){if(e==="outline")return Dw(t);let{of:n,at:o}=t,i=(s,a)=>f({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function Dw({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(n).map((o,i)=>r`<div class="row" id=${z(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${Q(n,i,`corner ${i+1}`)}
        </div>`)}
    ${K(n,"One more corner",()=>q(n,Ps,"corner"))}`}function Mw(t,e,n){let o=La[String(t.move)],i=`${$e.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${z($e,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${Q($e,e,s)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>Ow(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Fw(e,n)}
  </div>`}function Ow(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function Fw(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==S($e).length)return u;let i=o.length_mm>0?`${x(o.length_mm/10,1)} cm of bead`:"";return P({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:_t(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Cw(){let t=o=>({move:o,...Object.fromEntries(La[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=st("run",$e.at),n=yt("run",$e.at);return S($e).length||It("run",$e.at,e,"What the tip does"),r`${Wt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(La).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>q($e,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var St=()=>l.beside.studio!==void 0,ai=({run:t})=>g("run",t),Ea=({studio:t})=>g("studio",t);function li(t){return ai(t)===void 0&&St()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var vn=t=>ai(t)??Ea(t),Rt=(t,e)=>f({...e,...li(t)}),Ia=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function ui(t,e=""){return t===void 0||Ia(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>ui(o,`${e}/${At(n)}`))}function Lw(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Ia($(t,n))&&(t=C(t,n,void 0));return t}var Zp=(t,e)=>e.reduce((n,o)=>Lw(C(n,o,void 0),o),t);function Xp(t){let e=new Map;return t.flatMap(n=>ui(ai(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return Ia(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Wa(t){St()||await bc();let e=Xp(t);En([["studio",n=>e.reduce((o,[,i,s])=>C(o,i,s),n)],["run",n=>Zp(n,e.map(([o])=>o))]]),E("Kept in the studio")}function Bw(t){let e=t.flatMap(o=>ui(Ea(o)).map(([i,s])=>[o.run+i,s]));En([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?C(i,s,a):i,o)]]),E("Said in this run only")}function Ew(t){let e=t.flatMap(n=>ui(ai(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));En([["run",n=>Zp(n,e)]]),E("Taken from the studio again")}var Qp=t=>ui(t).length>0;function lo(t,e){if(!St())return u;let n=e.some(s=>Qp(ai(s))),o=e.some(s=>Qp(Ea(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Xp(e).length?i("Keep in my studio",()=>{Wa(e)}):u}
    ${n&&o?i("As in the studio",()=>Ew(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>Bw(e)):u}
  </span>`}function Ha(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Ft(o,n)===Ft(t,n))??t}var ci=()=>Object.keys(g("studio","/cups")??{}),di=()=>ci().length===1?{net:""}:ci().length?{cup:"",net:""}:{holds:"",net:""},tm="\0another";function pi(t,e="Cup holds"){let n=`${t}/holds`,o=ci();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?Iw(t):u}`;let i=a=>a===tm?L("run","Another cup",t,{...ja(t),holds:""},mt("run",n)):L("run",`Cup: ${a}`,t,{...ja(t),cup:a}),s=a=>F("studio",`/cups/${At(a)}`);return Tt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[tm,"Another cup"]],unsaid:"choose ...",chosen:F("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function ja(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var Iw=t=>r`<button type="button" @click=${()=>L("run","A cup of the studio",t,ja(t))}>
    A cup of my studio
  </button>`;function nm(){return St()?r`<div class="row">
    ${ci().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${At(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Ww()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Ww(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||em();e.value="",L("studio",`${n} added`,`/cups/${At(n)}`,"",mt("studio",`/cups/${At(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${em()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function em(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!ci().includes(e))return e}}var Hw=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Na=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function As(t){let{run:e}=Na(t);return A({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${St()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${lo("How warm",[Na(t)])} ${I("run",e)} ${jw(t)}`})}function jw(t){let{run:e,studio:n}=Na(t),o=c=>({run:`${e}/${c}`,studio:`${n}/${c}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(c,d,p=i)=>Rt(o(c),{label:d,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${Tt({label:"The lye cools in",...li(a),answers:Hw,unsaid:"not given",optional:!0})}
  </div>`}var Ht=()=>$(l.run.now,"/pipe")!==void 0;function om(){let t=e=>{let n=C(e,"/pipe",{formula:"",fills_headspace:"",whip:di()});return St()?n:C(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ut("set-up pipe"),so("run","Topping added",t,U("lane-pipe"))}function Nw(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:C(o,i,void 0),t)}function Uw(){so("run","Topping removed",Nw,U("topping-back"))}function im(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||Ht()?u:r`<button type="button" id="topping-back" @click=${Ki}>Bring the topping back</button>`}function Ua(){return r`${Yw()} ${As("pipe")}
    <p class="choice"><button type="button" @click=${Uw}>Take the topping away</button></p>`}var zw=["trials","beads","envelope"];function za(t){return zw.every(e=>g("run",`/pipe/${e}`)===void 0)&&It("run","/pipe",`${st("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Pe({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:di()},body:Jw})}
      ${Pe({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Vw})}
    </div>
    ${Pe({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Jp,body:()=>Vp(t)})}
    ${t?Kw(t):u}`}function Jw(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${z(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Q(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${K(t,"One more trial",()=>q(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${pi("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function Vw(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${k({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var qw={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Kw(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>P({key:`pipe.by.${i}`,label:qw[i],note:o(a),shown:_t(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${Gw(t)}`}function Gw(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=x(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>L("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function Ja(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})} ${pi("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function Yw(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return A({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Pe({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Qw(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Ds(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,Qw(t,e))}>It is really so: keep it</button>`:u}var Ms=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function Os(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${H(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var sm=t=>[...l.files?.runs??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Fs(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${Xo(e.map(sm))}.</p>`:u}function Cs(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Xo(e.map(sm))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}function Zw({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,c=a-s-n,d=[t.left-n,c,t.right-t.left+2*n,-t.floor+n-c],p=(m,_)=>M`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${d.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Eo(e,a))}${p("side",Eo(t.loops))}
    </svg>
  </div>`}function uo(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${Zw(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${T(_t(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${T(_t(l.units,i.total_ml))} together`:u},
      ${T(pt(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${T(_t(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var Xw={mm:"in",g:"oz","\xB0C":"\xB0F"},tb={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Ls(t,e,n=""){let o=Va(t);if(o)return o.unit??"";let i=_e($(D(),t));return tb[e]?.test(i)?i:n||(l.units==="us"?Xw[e]??e:e)}var Bs=()=>h({typed:void 0}),co=t=>`d${t.replaceAll("/","-")}`,Va=t=>l.typed?.key===co(t)?l.typed:void 0,Es=t=>Va(t)?.text??String($(D(),t)??"");function Ke(t){let{complaint:e}=B();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function qa(t,e,n,o){let{pointer:i}=t,s=a=>{let c=a.target.value,d=t.unit?Ls(i,t.unit,t.unit_before):"";h({typed:{key:co(i),text:c,unit:d}}),ct(i,eb(t,c,d))};return r`<input
    id=${co(i)}
    .value=${H(Es(i))}
    @input=${s}
    @blur=${Bs}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Ke(i)?"true":"false"}
  />`}function eb(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Zn(e)?`${e.trim()} ${n}`:e}function jt(t,e){let n=co(t.pointer),o=Ke(t.pointer),i=nb(t.pointer)??t.hint,s=t.unit?` (${Ls(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${qa(t,o||i?`${n}-said`:void 0,e)}
    ${Wt(n,o,i)}
  </div>`}function nb(t){let e=$(D(),t),n=Va(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function Is(t){let e=t.toLowerCase(),{file:n,shipped:o}=B().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function mi(t){let{open:e}=B();try{if(await de(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Me()})}catch(n){if(!(n instanceof y))throw n;return da(n)}l.run.file&&(te(),Y()),t(e.file)}var De="/shape/points",rm=500,Ge=(t,e)=>[De,t,...e?[e]:[]].join("/"),am=t=>Array.from({length:t.least},()=>({}));function lm(t){let e=Et(D(),De),n=ib(),{complaint:o}=B(),i=o?.field===De&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${Ls(Ge(-1,s.name),s.unit,um(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>ob(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=rm} @click=${()=>Hs(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function ob(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=sb(e),s=a=>{let{name:c,label:d,unit:p}=t.columns[a],m={label:d,pointer:Ge(e,c),unit:p,unit_before:um(t,e,c)},_=`${d}, ${n.has(e)?o:`point ${e+1}`}`;return qa(m,i?`point-${e}-said`:void 0,rb(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Hs(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>cm(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function ib(){let t=[...Do(D()),...Wi(D())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function sb(t){let{complaint:e}=B();return Ke(Ge(t))??(e?.about===Ge(t)?e.line:void 0)}function um(t,e,n){let o=(i,s)=>_e($(D(),Ge(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function Ws(t,e){queueMicrotask(()=>document.getElementById(co(Ge(t,e)))?.focus())}function Hs(t,e){let n=[...Et(D(),De)];n.length>=rm||(n.splice(e,0,{}),Bs(),ct(De,n),Ws(e,t.columns[0].name))}function cm(t,e,n=0){let o=Et(D(),De).filter((i,s)=>s!==e);Bs(),ct(De,o.length?o:[{}]),Ws(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function rb(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!Es(Ge(e,o))&&!Es(Ge(e,i));if(s.key==="Enter"&&s.shiftKey)Hs(t,e+1);else if(s.key==="Enter"&&n===0)Ws(e,i);else if(s.key==="Enter"&&e+1<Et(D(),De).length)Ws(e+1,o);else if(s.key==="Enter")Hs(t,e+1);else if(s.key==="Backspace"&&a&&Et(D(),De).length>1)cm(t,e,e>0?1:0);else return;s.preventDefault()}}var Ka={weighings:[""]},Ga=/\.(3mf|gltf|glb)$/i;function js(t){let e=Be(t);return e?{kind:t,points:am(e)}:{kind:t}}var ab=()=>ct("/water",Ka),we=t=>Zt(D(),t),fi=()=>Ao(D());function dm(t){let{open:e,answer:n,is_old:o}=B();return r`${to(e,()=>{mi(t)})} ${eo(e)}
    ${e.shipped?u:Cs(l.files?.moulds.find(i=>i.file===e.file))}
    ${we("shape")&&we("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${we("shape")?rt("Shape",fi(),Object.entries(zu),lb):u}
    <div class="beside ${Be(fi())?"rows":""}">
      <div>
        ${Ya()} ${we("shape")?cb():u} ${we("mesh")?db():u}
        ${Qa()} ${we("water")?mb():u} ${hb()}
      </div>
      <div class="stays">${uo(n,o,mm())} ${gb(t)}</div>
    </div>`}function lb(t){let e={...B().shapes,[fi()]:D().shape};v(B(),{shapes:e,answer:void 0}),ct("/shape",e[t]??js(t))}function ub(){let{shipped:t,file:e}=B().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function Ya(){let t=ub();return jt({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function cb(){let t=fi(),e=Be(t);return r`${Mn(t).length?r`<div class="row">
          ${Mn(t).map(n=>jt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?lm(e):u}`}function Qa(t=Tr(D())){return r`<div class="row">
      ${t?u:jt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${jt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${jt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${jt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Za=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Xa=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function db(){let t=o=>String($(D(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=Ke(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${rt(o,t(i),s,c=>ct(`/mesh/${i}`,c||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Ke("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${Ga.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",Za)} ${e("Which way is up","up",Xa)}
    ${t("role")==="body"?pb():u}
    <div class="row">
      ${jt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${jt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function pb(){let t=$(D(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${rt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>ct("/mesh/on_board",e==="yes"?!0:void 0))}`}function mb(){let t=$(D(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>ct("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(D(),"/water/weighed_in"),i=e===void 0||e==="brim"?Ke("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${jt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${rt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?jt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?jt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${rt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>ct("/water/weighed_in",s))}
    <div class="row">
      ${Et(D(),"/water/weighings").map((s,a)=>jt({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},fb(a)))}
    </div>
    ${B().complaint?.field==="/water/weighings"?r`<p class="complaint">${B().complaint.line}</p>`:u}
    <button type="button" @click=${pm}>One more round</button>`}function pm(){let t=Et(D(),"/water/weighings").length;ct(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var fb=t=>e=>{e.key==="Enter"&&(t+1===Et(D(),"/water/weighings").length?pm():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function hb(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${we("shape")?u:t("Add measures, as a check",()=>ct("/shape",js("block")))}
    ${we("shape")&&we("mesh")?t("Leave the measures out",()=>ct("/shape",void 0)):u}
    ${we("water")?t("Leave the water out",()=>ct("/water",void 0)):t("Add weighed water",ab)}
  </div>`}function mm(){let t=Wi(D()).length;return t?[...Mo(D()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Mo(D())}function gb(t){let e=String(D().name??"").trim(),n=Is(e),{open:o,answer:i,is_old:s,complaint:a}=B(),c=i&&!s&&!a&&!mm().length&&e&&!n,d=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{mi(t)}}>
      ${d?"Save the change":"Use this mould"}
    </button>
    ${d?r`<p class="aside">It stays in ${d}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${tl(e,n)}
    ${a?r`<p class="alarm" role="status">${_b(a.field)}${a.line}</p>
            ${Ds(D(),a.keep,ct)}`:u}`}var tl=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function _b(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Mn(fi()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var $b=200*2**20;async function fm(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),ct("/name",t.name.replace(/\.\w+$/,"")),t.size>$b){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return v(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Hu(t,o=>v(e,{share:o}));v(e,{share:1,upload:n.file}),await gm(e)}catch(n){v(e,{complaint:n instanceof y?n.message:String(n)})}}async function gm(t){let e=t.questions+1;v(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Hn({file:n,unit:o,role:i,up:s});e===t.questions&&v(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof y))throw a;if(e!==t.questions)return;let c=o?t.sizes:vb(a.complaint),d=c.length&&!o?void 0:Z(a.complaint);v(t,{sizes:c,complaint:d,is_measuring:!1})}}async function wb(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await Lu({file:n,unit:o,up:i});e===t.questions&&v(t,{inspection:s})}catch(s){if(!(s instanceof y))throw s;e===t.questions&&v(t,{complaint:Z(s.complaint)})}}function bb(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(yb)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{wb(t)}}>List every defect of the mesh</button>`}var yb=({text:t})=>r`<li>${t}</li>`;function vb({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>x(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function el(t,e){v(t,e),gm(t)}function _m(t,e){let n=a=>{let c=a.target;fm(c.files?.[0]),c.value=""},o=a=>{a.preventDefault(),fm(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?kb(l.mesh,t,e):u}`}function kb(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!Ga.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${rt("Unit of the file's numbers",t.unit,i,s=>el(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?bb(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${rt("Role",t.role??t.answer?.gauge.role,Za,s=>el(t,{role:s}))}
            <h4>Which way is up</h4>
            ${rt("Up",t.up??"",Xa,s=>el(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${uo(t.answer)} ${xb(t,e,n)}`:u}`}var $m=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function xb(t,e,n){let o=String(D().name??"").trim(),i=Is(o),s=o&&!i&&!t.is_keeping;return r`${Ya()} ${Qa($m(t))} ${tl(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>hm(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>hm(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function hm(t,e,n){v(t,{is_keeping:!0});try{let o=Tb(t,await ju(t.upload,Rb(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await Sb(o))return e(o);Gn(o,"mesh",B().title),await mi(n),v(t,{complaint:l.mould?.complaint?.line})}catch(o){v(t,{complaint:o instanceof y?o.message:String(o)})}v(t,{is_keeping:!1})}function Tb(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=D();return{...i,...$m(t)||o===void 0?{}:{cavities:o},mesh:n}}async function Sb(t){try{return await Oe({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof y&&e.status===422)return!1;throw e}}var Rb=t=>Dn(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var Ns={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},wm={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function bm(t){me();let e={...wm,shape:js("block")};t==="mesh"?Gn(wm,"mesh",Ns[t]):Gn(t==="water"?{...e,water:Ka}:e,"form",Ns[t]),zs()}async function ym(t,e){me(),await Hd(t,e),zs()}async function Us(t){me(),await jd(t),zs()}function Pb(t){Gn(t,"form","More about this mould"),zs()}function zs(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function vm(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?_m(t,Pb):dm(t)}
  </section>`}var nl=()=>h({chosen_mould:void 0});function hi(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",told:e};h({chosen_mould:i}),Ab(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Ab(t){try{v(t,{answer:await Hn({file:t.file})})}catch(e){v(t,{complaint:e instanceof y?e.message:String(e)})}}var Db=t=>l.files?.moulds.find(e=>e.file===t);function km(t,e){let n=()=>e(async()=>{await ym(t.file,t.shipped),nl()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Fs(Db(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?uo(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:Mb(t,e)}
    </div>
  </section>`}function Mb(t,e){let n=Ms(t.sell),o=i=>()=>e(()=>rs({mould:t.file,name:t.name,formula:i,sell:n}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${Os("mould-sell",t.sell,i=>v(t,{sell:i}))}
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(i=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${o(i.file)}>
              <b>${i.name}</b><span>${i.note||i.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}var kn={pour:"base",pipe:"topping",apart:"formula"},Ob=[...Ko,...Go,...Object.values(kn),"describing","chosen"];function gi(){let{view:t,run:e,formula_of:n,formulas:o,mould:i,chosen_mould:s}=l;if(t!=="reading")return pe(t)?{name:t,file:e.file,of:e}:t==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:t==="moulds"&&s?{name:"chosen",file:s.file,of:s}:t!=="formula"?{name:t}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:kn[n],file:e.file,of:e}}var be=({name:t,file:e})=>`#${t}${e?`/${e.split("/").map(encodeURIComponent).join("/")}`:""}`;function ol(t){let[e,...n]=t.slice(1).split("/");if(Ob.includes(e))try{return{name:e,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function Tm(t){if(!t)return{};let e=t.name;return pe(e)?{run:t.file,view:e}:{run:t.name===kn.pour||t.name===kn.pipe?t.file:void 0,view:Jt(e)?e:"reading"}}async function Sm({name:t,file:e}){if(!(!(t===kn.apart&&l.formulas.apart?.file===e)&&!await as()))try{await Fb(t,e)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Fb(t,e=""){let n=t;if(pe(n))return xm(e,n);let o=["pour","pipe"].find(i=>kn[i]===t);if(o)return await xm(e,"formula"),Vt(o);if(t===kn.apart)return Yo(e);await Cb(t,e)}async function xm(t,e){t===l.run.file||!t?h({view:l.run.file?e:"runs",typed:void 0}):await Ne(t,e)}async function Cb(t,e){let n=t;nl(),me(),h({view:Jt(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=Ji(Mt).find(i=>i.id===e);t==="describing"&&o&&await Us(o),t==="chosen"&&hi(e),Lb()}async function Lb(){try{h({files:await Me()}),is()}catch(t){if(!(t instanceof y))throw t;h({list_complaint:t.message})}}var Nt={id:""},vt,il=!1,rl=new Map,Js=JSON.parse(sessionStorage.getItem("left")??"{}");function Pm(){let t=gi();il||!t||vt&&be(vt)===be(t)||(Vs(),Am(t))}function Am(t){let e=!vt||vt.name===t.name&&vt.of!==void 0&&vt.of===t.of;if(vt=t,e)return po();Nt={id:crypto.randomUUID(),before:location.hash},rl.set(Nt.id,t.of),history.pushState(Nt,"",be(t)),requestAnimationFrame(Eb)}function po(){vt&&(Nt.id||(Nt={id:crypto.randomUUID()}),rl.set(Nt.id,vt.of),history.replaceState(Nt,"",be(vt)))}var Bb="button, input, select, summary, a[href], [tabindex]",sl=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Dm=t=>[...document.querySelectorAll(`#main :is(${Bb})`)].filter(e=>sl(e)===t);function Vs(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Js[Nt.id]={scroll:scrollY}:Js[Nt.id]={scroll:scrollY,words:sl(t),nth:Dm(sl(t)).indexOf(t)}}function Eb(){scrollTo(0,0),document.activeElement?.closest("#main")||Mm()}function Mm(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Om(){let{scroll:t,words:e,nth:n=0}=Js[Nt.id]??{scroll:0},o=e===void 0?void 0:Dm(e)[n];o?o.focus({preventScroll:!0}):Mm(),scrollTo(0,t)}var qs=t=>Fm({name:t,file:pe(t)?l.run.file:void 0});async function Fm(t){Vs(),await al(t,()=>{let e=gi();e&&!(vt&&be(vt)===be(e))&&Am(e)})}async function al(t,e){il=!0;try{await Sm(t)}finally{il=!1,e()}}function Cm(t){Nt.before===be(t)?history.back():Fm(t)}var Rm=Promise.resolve();function Ib(t,e){Vs();let n=()=>history.state?.id!==t?.id;Rm=Rm.then(async()=>{if(!e)return po();if(n())return;let o=t?rl.get(t.id):void 0,i=[l.run,l.formulas.apart].find(s=>s&&s===o);await al(i?{...e,file:i.file}:e,()=>{vt=gi(),!n()&&(Nt=t??{id:crypto.randomUUID()},po(),requestAnimationFrame(Om))})})}function Lm(){history.scrollRestoration="manual",addEventListener("popstate",t=>{bu()||Ib(t.state,ol(location.hash))}),addEventListener("pagehide",()=>{Vs(),sessionStorage.setItem("left",JSON.stringify(Js))})}async function Bm(){let t=ol(location.hash);t&&(Nt=history.state??{id:""}),await Od(Tm(t)),t&&Wb(t)&&await al(t,()=>{vt=gi(),po(),requestAnimationFrame(Om)}),await Fd()}var Wb=t=>!vt||be(vt)===be(t);function mo(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=Ss()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${ll(e.field)}${Z(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${ul}>Ask again</button>`:u}
              ${Re("run")?Ds(l.run.now,e.keep,(n,o)=>W("run",n,o)):u}
              ${Hb()?r`<button type="button" @click=${Nb}>Go to the field</button>`:u}`:u}
    </div>
    ${ri()}`}function ll(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function ul(){Y(),l.run.failed&&ee()}function Hb(){if(Em())return!0;let t=wn();return t?document.activeElement!==t:jb()}var jb=()=>l.view!=="set-up"&&Re("run")&&l.complaint!==void 0&&l.complaint.field!=="",Em=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&Re(t));function Nb(){let t=wn(),e=Em();if(t)return ws(t);e?Vt(e):qs("set-up"),Ub(()=>ws(wn()))}function Ub(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Im=()=>[...Zi().map(t=>to(t)),...Qi().map(eo)];function Wm(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Im()}${mo()}
      <p>Reading the formula ...</p>
      ${dl(t)}`;let n=l.plan&&Yn(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Im()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${zb(t)}</p>
    <div class="choice">${dl(t)}${t==="apart"?Jb():u}</div>
    ${Cs(l.files?.formulas.find(i=>i.file===e.file))} ${Vb(t,o,n)} ${jm(t)}
    ${Sa(t)} ${Ra(t,o)} ${Aa(t)} ${wa(t)}
    <div class="choice">${dl(t)}</div>`}var Hm=t=>[jm(t),Sa(t),Ra(t,void 0),Aa(t),wa(t)],cl=()=>String(l.run.now.name??l.run.file);function zb(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${cl()}".${n}`:o?`Base and topping of "${cl()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${cl()}".${n}`}function dl(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Cm(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function Jb(){return r`<button type="button" @click=${()=>{ia("pour")}}>Use it as the base</button> ${Ht()?r`<button type="button" @click=${()=>{ia("pipe")}}>Use it as the topping</button>`:u}`}function Vb(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...qb(t,n),...Kb(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?tp(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Gb(t)}
  </section>`}function qb(t,e){let n=t==="pipe"?ma(e,e.whippings[0]):"";return n?[["For one whipping",n]]:wt(e.whole)?[["For one batch",fe(e.whole,e.batch)]]:[]}function Kb(t,e){let n=Ue(t).length?" \u26A0":"";return[["Fats",T(O(l.units,e.fats_g))],["Superfat as weighed",`${ge(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...fs(e).map(({one:o})=>[o.name,T(_n(l.units,o))])]}function Gb(t){let e=Ss()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${ri()}`;let n=Re(t),o=n&&e.field!==""&&document.activeElement!==wn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${ll(e.field)}${Z(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${ul}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>wn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${ri()}`}function jm(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${A({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}async function Ct(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof y&&await We().catch(()=>{})}}var pl=()=>{Ct(Tc)};function fo(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Lo()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${pl}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Nm=new Map,Um=Promise.resolve();function zm(t,e=""){let n=`${t}
${e}`,o=Nm.get(n);return o||(o=Um.then(()=>Yb(t)),Um=o,Nm.set(n,o)),o}async function Yb(t){try{let e=await Fe({kind:"glb",gauge:{file:t}}),n=Wn(await e.arrayBuffer());return Io(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof y)return;throw e}}var ml=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{zm(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void ae(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,c=.04*Math.max(o-n,s-i),d=[n-c,-s-c,o-n+2*c,s-i+2*c];ae(r`<svg viewBox=${d.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Eo(a)} />
      </svg>`,this)}};customElements.define("mould-picture",ml);function ho(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{Ct(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>Qb(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?Zb(t,s):u}
  </li>`}function Qb({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Bo(n)}:void 0})}function Zb(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{Ct(()=>ty(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&Bo(o.file)===e.stem,a=()=>{Ct(()=>ey(t,e))};return r`<div class="acts">
    ${Fs(o)} ${fl("Name",e,"name")} ${fl("Note",e,"note")}
    ${fl("Name of the file",e,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!e.name.trim()||!e.stem.trim()}
        @click=${a}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{Ct(()=>Jm(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Xb(o,e):u}
  </div>`}function fl(t,e,n){let o=`list-${n}`,i=s=>v(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${H(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Xb(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{Ct(()=>Jm(t,e,!0))}}>Remove it even so</button>
  </div>`}async function ty(t,e){let n=await Sc(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Bo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function ey({kind:t,one:e},{name:n,note:o,stem:i}){await Ac(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function Jm(t,e,n){let o=t.used_by??[];if(o.length&&!n)return v(e,{used_by:o});try{await Dc(t,n),h({list_open:void 0})}catch(i){let s=i instanceof y?i.answer.used_by:void 0;if(!s)throw i;v(e,{used_by:s})}}var hl=t=>v(l.new_formula,t);function Vm(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>Ct(async()=>{await i(t.trim()),hl({name:"",copied:""})});return r`${fo("Formulas")}
    <section aria-label="Formulas">
      <ul class="cards">
        ${n.map(ny)}
      </ul>
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${H(t)}
            @input=${i=>hl({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Ld)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>hl({copied:i.target.value})}
          >
            <option value="" .selected=${H(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${H(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Bd(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function ny(t){let e=t.changed?[`changed ${Xn(t.changed)}`]:[];return ho({kind:On,one:t,facts:e,open:()=>Yo(t.file)})}function oy(t){me(),hi(t,`Saved in ${t}.`)}function Km(){let{chosen_mould:t}=l;return r`${fo("Moulds")}
  ${t?km(t,Ct):vm(oy)??r`${sy()} ${iy()}`}`}function iy(){let t=(l.files?.moulds??[]).filter(e=>!e.shipped);return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${t.map(e=>qm(e,ly(e.file)))}${l.catalogue.map(e=>qm({file:e.path,name:e.name,note:"",shipped:!0},[`${T(_t(l.units,e.brimful_ml))}, ${it(e.cavities,"cavity","cavities")}; ${e.description}`]))}
    </ul>
  </section>`}var qm=(t,e)=>ho({kind:Mt,one:t,facts:e,picture:t.file,open:()=>Promise.resolve(hi(t.file))});function sy(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${ry()}
    <div class="choice">
      ${Object.entries(Ns).map(([t,e])=>r`<button type="button" @click=${()=>bm(t)}>${e}</button>`)}
    </div>
  </section>`}function ry(){return Ji(Mt).map(t=>{let e=String(ot(t.text)?.name??"").trim()||ay(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Ct(()=>Us(t))}>Continue</button>
        <button type="button" @click=${()=>{Ee(Mt,t.id),J()}}>Discard it</button>
      </div>
    </div>`})}var ay=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function ly(t){let e=hd(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[T(_t(l.units,e.brimful_ml)),it(e.cavities,"cavity","cavities")]:["measuring ..."]}function Gm(){let t=uy();if(t)return t;let{run:e}=l,n=l.formula_of==="apart"||!(N(e)||e.theirs||e.failed);return l.view==="formula"&&n?cy():e.theirs?Zm(e):e.failed?_l(`Not saved: ${e.failed}`):N(e)?Qm:gl(e.shipped?Ym:`Saved in ${e.file}`)}var Ym="Built-in example: your first change is saved as a copy.",Qm={words:"Saving ...",is_kept:!1},gl=t=>({words:t,is_kept:!0}),_l=t=>({words:t,is_kept:!1,is_failed:!0}),Zm=t=>_l(pn(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function uy(){let t=l.formulas.apart?"apart":"run",e=Te(t);if(e)return Zm(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&N(o)))return l.complaint?.file===""?_l(`Not saved: ${l.complaint.problem}`):Qm}function cy(){let t=l.formulas[l.formula_of];return gl(t?t.shipped?Ym:`Saved in ${t.file}`:"")}function Ks(){let{view:t,mould:e,past:n,future:o}=l;return t==="moulds"&&e?Xm(e,Nd,Ud):Jt(t)?{undo:Lo()&&pl}:Xm({past:n,future:o},Ki,fc)}var Xm=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var tf={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},dy={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},py="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",my="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",$l=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${t} />`}</svg>`;function ef(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Ko.map(e=>nf(e,tf[e],r`${tf[e]}`))}
              </nav>
              ${hy()}`}
    </div>
    ${t?u:gy()}
  </header>`}var fy={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function hy(){let t=e=>()=>{h({units:e}),localStorage.setItem("units",e)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${t(e)}>
          ${fy[e]}
        </button>`)}
  </div>`}function gy(){let{undo:t,redo:e}=Ks();return r`<div class="bar">
    ${l.run.file?_y():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${$l(py)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${$l(my)}<span>Redo</span></button>
    </div>
    ${l.run.file?yy():u}
  </div>`}function _y(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${Go.map($y)}</div>
  </nav>`}function $y(t){let[e,n]=dy[t],o=wy(t);return nf(t,o?`${e}, ${o.words}`:e,r`${$l(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function wy(t){if(t==="watch"&&Kd())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&by())return{sign:"\u25CB",words:"missing"}}var by=()=>l.complaint!==void 0&&!l.complaint.is_fault;function nf(t,e,n){let o=l.view===t;return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{qs(t)}}
  >
    ${n}
  </button>`}function yy(){let{words:t,is_kept:e,is_failed:n}=Gm();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}function sf(t){if(!Qd(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=wt(e)?`${it(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${of(t,"pour","The base, whole run")}
      ${e.pipe?of(t,"pipe","The topping, whole run"):u} ${vy(t)}
    </div>
  </section>`}function of(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...cp(i),...fs(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:c})=>Gs(`${e}.ingredients.${c}.g`,a.name,_n(l.units,a)))}
    ${Gs(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",O(l.units,i.make_g))}
  </div>`}var Gs=(t,e,n)=>P({key:`needs.${t}`,label:e,shown:n,of:t});function vy(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((c,d)=>({layer:s,one:c,i:a,j:d}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>et(l.units,bt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:c,j:d})=>Gs(`pour.layers.${c}.colours.${d}.g`,`${a.name}, for ${s.name}`,_n(l.units,a)))}
    ${o.map((s,a)=>Gs(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function rf(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,c=s?"A bar on average, ":"",d=p=>c?c+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${P({key:"piece.fresh",label:d("Fresh"),shown:O(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:P({key:"piece.cured",label:d("Cured"),shown:O(l.units,o),of:"piece.cured_g"})}
      ${s?P({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:O(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:P({key:"piece.label",label:"Net weight for the label",shown:O(l.units,i,0),of:"piece.label_g"})}
      ${a?P({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>x(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${P({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${wl(t)}
    </section>
    ${sf(Yn(t))}`}function wl(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[lf,yl]=[440,270],[_i,bl,Ys,go]=[64,lf-10,10,yl-52],ky=6,xy=8;function af(t){let e=t/ky,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var _o=t=>x(t,1);function uf(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=c=>_o(_i+(bl-_i)*c/n),s=c=>_o(go-(go-Ys)*c/o),a=t.map(({depth_mm:c,volume_ml:d})=>`L${i(c)} ${s(d)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${lf} ${yl}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${af(n).map(c=>M`<path class="grid" d="M${i(c)} ${Ys}V${go}" />
            <text x=${i(c)} y=${go+20} text-anchor="middle">${_o(c)}</text>`)}
      ${af(o).map(c=>M`<path class="grid" d="M${_i} ${s(c)}H${bl}" />
            <text x=${_i-8} y=${s(c)} text-anchor="end" dominant-baseline="middle">${_o(c)}</text>`)}
      ${M`<text x=${(_i+bl)/2} y=${yl-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Ys+go)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${Ys}V${go}" />`}
    </svg>
    ${Ty(t)}`}function Ty(t){let e=Math.max(1,Math.round(t.length/xy)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${_o(o)}</th>
              <td>${_o(i)}</td>
              <td>${x(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Qs=Math.PI/8,Sy=500,vl=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#d()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#p()},Sy))}#d(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#d();if(e!==this.#a){try{let n=await Fe(JSON.parse(e));if(e!==this.#d()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Wn(await n.arrayBuffer())),this.#a=e,this.#l=""}catch(n){if(!(n instanceof y))throw n;this.#l=n.message}this.#u()}}#_(e){e(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;ae(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Qs)}>Turn left</button>
        <button type="button" @click=${e(Qs)}>Turn right</button>
        <button type="button" @click=${n(Qs)}>From above</button>
        <button type="button" @click=${n(-Qs)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",vl);function cf(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${P({key:"mould.brimful",label:"To the brim",note:`${T(pt(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:_t(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${uf(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${Ry(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function Ry(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var $o=t=>v(l.printing,t);function df(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function pf(t){if(!l.printing.is_working){$o({is_working:!0,told:"Making it ..."});try{await Py(),$o({told:await t()})}catch(e){$o({told:e instanceof Error?e.message:String(e)})}$o({is_working:!1})}}async function Py(){await jn();let t=Te("run");if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var Ye=(t,e)=>()=>pf(async()=>{let n=URL.createObjectURL(await Fe(e));return df(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),Ay=t=>()=>pf(async()=>(df(await Wu(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),Dy=t=>{$o({paper:t}),localStorage.setItem("paper",t)},My=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function mf(t){let{batch:e}=l.printing;return wt(t)&&e<=t.pieces.batches?e:0}function Oy(t){if(!wt(t))return u;let e=mf(t),n=i=>$o({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${H(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${My(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${fe(t,s)}`))}
      </select>
    </div>
  </div>`}function ff(t){let{paper:e,is_working:n,told:o}=l.printing,i=l.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:l.run.file,run:l.run.now},a=l.measured?.mould,c={file:a,"below-brim":`${t.pour.below_brim_mm} mm`},d=mf(t),p={plan:s,paper:e,...d?{batch:String(d)}:{}},m=(_,b,w="")=>r`<button type="button" class=${w} ?disabled=${n} @click=${()=>{b()}}>${_}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${rt("Paper",e,[["A4","A4"],["Letter","Letter"]],Dy)}
    ${Oy(t)}
    <div class="choice">
      ${m("Bench sheet, to print",Ay({kind:"sheet",...p}),"strong")}
      ${l.files?.makes_pdf?m("Bench sheet, PDF",Ye(`${i}${d?` batch ${d}`:""}.pdf`,{kind:"sheet-pdf",...p})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?m("Label draft",Ye(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",Ye(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",Ye(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",Ye(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",Ye(`${i}.stl`,{kind:"stl",plan:s}))}
      ${a?r`${m("Filled cavity, GLB (3D viewer)",Ye(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${m("Cavity, STL (3D printing)",Ye(`${i} cavity.stl`,{kind:"stl",gauge:{file:a}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${T(pt(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var hf=t=>ff(t);var kt={at:"/decorations"},wo=t=>`${kt.at}/${t}`,Qe=t=>F("run",`${wo(t)}/name`).trim()||`Decoration ${t+1}`,Gt=()=>$(l.run.now,"/cut")!==void 0,Zs=t=>["mould","rod","drizzle"].find(e=>g("run",`${t}/${e}`)!==void 0),$i=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var Ut="/batch",gf=t=>`${t}/moulds_owned`;function kl(){return A({name:"batches",pointers:[Ut],summary:`Batches${Fy()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",Ut)}
        <div class="row">${Cy()} ${By()}</div>
        ${k({question:"Cavities at each filling",at:Ut,asked_at:`${Ut}/fill`,chosen:g("run",`${Ut}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>_f("fill",t==="full"?t:void 0)})}`})}function Fy(){let[t,e]=[`${Ut}/pieces`,`${Ut}/casts`].map(o=>F("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function _f(t,e){let n=X("run",Ut,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function Cy(){let t=g("run",`${Ut}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${Ut}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return Gt()?g("run",`${Ut}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${Ly}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function Ly(){L("run","Counted in loaves",Ut,_f("pieces",void 0))}function By(){let t=`${Ut}/whippings`;return!Ht()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Ey=500,Iy=()=>$(l.run.now,"/cut")===void 0&&Wy()>=Ey,Wy=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0;function $f(t){ut("set-up cut"),L("run","Cut","/cut",{bar:xl[t],kerf:""},mt("run",`/cut/bar/${Object.keys(xl[t])[0]}`))}function Hy(){L("run","Left whole","/cut",void 0,U("cut-into-bars"))}function wf(){return Iy()?r`<button type="button" id="cut-into-bars" @click=${()=>$f("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>$f("slab")}>Cut it into bars</button>`:u}var xl={loaf:{thickness:""},slab:{length:"",width:""}};function jy(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var Ny={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function bf(){let t=jy(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=F("run","/cut/along");return r` ${k({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>xl[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${f({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${t?k({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Ny[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${Hy}>Leave it whole</button>`}var Uy={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Yt={at:"/dust"},Xs=t=>F("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function yf(){ut("set-up dust"),q(Yt,{name:""},"Dust")}function zy(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function vf(t){let e=`/dust/${t}`,n=zy(e),o=Xs(t),i=s=>({...X("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...Uy[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${k({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${qe("run",e,o)}`}var Jy={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function Vy(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function kf(t,e){let n=Vy(t),o=i=>({...X("run",t,["on_top","buried"]),...Jy[i]});return Zs(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:A({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${k({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?qy(`${t}/on_top`):n==="buried"?Gy(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function qy(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${xf(t,"It is turned")}`}function xf(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return A({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var Ky=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Gy(t,e){let n=`${t}/buried`,o=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),i=g("run",`${n}/placed`);return r`${I("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${k({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:s=>s})}
  ${k({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:o,answers:Ky,puts:s=>Qy(t,s)})}
  ${o==="said"?Xy(t,e):u}`}var Yy=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${M`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,Tf={x:"",y:"",height:""};function Qy(t,e){let n=X("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${$i(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Tf);return{...X("run",t,["per_piece","per_cast"]),[Sf(t)]:i.length,buried:{...n,places:i}}}var Sf=t=>Gt()?"per_cast":$i(t)??"per_piece";function Zy(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>C(s,`${t}/${a}`,void 0),n);return C(i,`${t}/${Sf(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function Xy(t,e){let n=Zy(t),o=S(n);return r`${Yy()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,c=d=>f({label:`Place ${s+1}: ${d}`,at:`${a}/${d}`,unit:"mm",short:!0});return r`<div class="part" id=${z(n,s)} role="group" aria-label="Place ${s+1} of ${Qe(e)}">
        ${I("run",a)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${Q(n,s,`place ${s+1} of ${Qe(e)}`)}
        </div>
        ${xf(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${K(n,"Add a place",()=>q(n,Tf,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Rf=t=>`${t} made`;function tv(){let t=wo(S(kt).length),e=Gt()?{}:{per_piece:""};ut("set-up decorate");for(let n of[Rf(t),`${t} where`])ao("run",n);q(kt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Pf(){let[t,e]=[S(kt).length>0,S(Yt).length>0];return r`${K(kt,t?"Add another decoration":"Add a decoration",tv)}
  ${K(Yt,e?"Add another dust":"Add a dust",yf)}`}function Af(t){let e=wo(t);return r` ${I("run",e)} ${iv(e)}
    <div class="row">
      ${ev(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${f({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
      ${f({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
      ${f({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}
    </div>
    ${kf(e,t)} ${qe("run",e,Qe(t))}`}function ev(t){let e=$i(t),n=gt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Gt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Gt()?"In each loaf":"In each cast":Gt()?"On each bar":"On each piece",i=s=>({...X("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Gt()?k({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var nv={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function ov(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...e==="drizzle"?["on_top","buried"]:[]];return{...X("run",t,n),...nv[e]}}function iv(t){let e=Zs(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${t}/${o}`);return A({name:Rf(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${k({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>ov(t,o)})}
        ${e?sv[e](t):u}
        ${f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var sv={mould:rv,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function rv(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${ro("Cast in",`${t}/mould`,l.files?.moulds)}
  ${k({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${k({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Df(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!Ht()?u:r`${$a(t,"Make one pot of lye solution for both",e,{})}
  ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Mf(t){let e={at:"/bottles"},n=S(e);return A({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&tt(t)?` Weights are of ${tt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${z(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${Q(e,i,a)}
            </div>
            ${I("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?av(t,i,a):u}
          </div>`})}
        ${K(e,"Use up a bottle",()=>q(e,{name:"",holds:""},"bottle"))}`})}function av(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>P({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${x(i.percent_of_batter,2)} % of the batter`,shown:et(l.units,bt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var wi="/label",Sl=()=>g("run",wi)!==void 0;function Of(){let e=g("studio",bo.studio)!==void 0?{weight_spread:""}:{market:""};ut("set-up label"),L("run","Label added",wi,e,U("lane-label"))}function Ff(){return r`${I("run",wi)} ${lv()}
    <button type="button" @click=${()=>L("run","Label removed",wi,void 0)}>Remove the label</button>`}var bo={run:"/label/market",studio:"/label/market"};function Rl(){let{of:t,at:e}=li(bo);return r`${k({of:t,question:"Where it is sold",at:t==="run"?wi:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?uv(n):n})}
  ${lo("Where it is sold",[bo])}`}function lv(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${Rl()}
  ${k({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:cv})}
  ${t==="weighed"?dv():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${vn(bo)==="EU"||g("run",Tl)!==void 0?$a(Tl,"With the e mark",g("run",Tl)===!0,!0):u}`}var Tl="/label/e_mark";function uv(t){return{...X("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function cv(t){let e=X("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function dv(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${z(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Q(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${K(t,"One more piece",()=>q(t,"","piece"))}`}function Cf(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(d=>`${pa(t)?`${d.count} of `:""}${fe(t,d)}`),a=`Made in ${e} batches${pa(t)?": ":" of "}${Xo(s)}; ${cs(n,o)}.`,c=t.batch_limits.filter(d=>d.sets);return r`<div class="batches-told of-plan">
    ${wt(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${it(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?r`<p><span class="called">What sets a batch:</span> ${c.map(d=>d.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(d=>d.text).join(" ")}</p>`:u}
  </div>`}var Lf=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Bf(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(d=>!d.buried&&d.cavity_fills>0),s=i?Hf(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,c=t.pipe?pv(t,e,n,a):0;return{brim:n,line:o,topping:c,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+c+a)}}function pv(t,e,n,o){let i=Qn($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,c]=Ir(e,e.brim-.01),d=Math.PI/4*(c-a)**2;return 1500*t.pipe.visible_each_ml/d}function Pl(t,e){let[n,o]=Ir(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),c=m=>-(e.brim+e.topping*m/s),d=(m,_,b)=>{let w=i+b*(Math.max(a(m),a(_))+(o-n)*.035);return`C${w} ${c(m)} ${w} ${c(_)} ${i+b*a(_)*(_?.94:1)} ${c(_)}`},p=`M${n} ${c(0)}`;for(let m=0;m<s;++m)p+=d(m,m+1,-1);p+=`L${i+a(s)*.94} ${c(s)}`;for(let m=s;m>0;--m)p+=d(m,m-1,1);return`${p}Z`}var bi=(t,e)=>t===e?`shaded ${e}`:"plain";function Ze(t,e,n=u){return r`${Ef(t,e,n)}
  ${t==="decorate"&&Al(e)?r`<p class="hint">${Al(e)}</p>`:u}`}var Xe=(t,e)=>r`<div class="small-view">${Ef(t,e,u)}</div>`;function Ef(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=Bf(e,o),s=o.right-o.left,a=Math.max(6,s*.1),c={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${vv(t,e)}>
      ${mv(t)} ${fv(t,e,o,i)} ${gv(t,e,o,i)} ${_v()}
      ${$v(t,e,o,i)} ${yv(t,e,o,i)}
      ${M`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function If(t,e){let n=l.measured.outline,o=Bf(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function mv(t){return M`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${Lf(Wf())} /></clipPath>
  </defs>`}function Wf(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function fv(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(c=>hv(c,n)):[[o.line,o.line]]).map(([c,d])=>`M${n.left} 0V${-c}L${n.right} ${-d}V0Z`);return M`<g clip-path="url(#cavity-${t})">${a.map((c,d)=>M`<path class="whole" d=${c} /><path class="${bi(i,"pour")} band${d%3}" d=${c} />${i==="pour"&&d%2===0?M`<path fill="url(#hatch-${t})" d=${c} />`:u}`).reverse()}</g>`}function hv(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function gv(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${t})"><rect class=${bi(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function _v(){return M`<path class="wall" fill-rule="evenodd" d=${Lf(Wf())} />`}function $v(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((c,d)=>(c.buried?.embeds??[]).map(p=>({embed:p,one:c,i:d})))??[];return M`
    ${e.pipe?M`<path class=${bi(t,"pipe")} d=${Pl(n,o)} />${t==="pipe"?M`<path fill="url(#dots-pipe)" d=${Pl(n,o)} />`:u}`:u}
    ${t==="dust"?wv(e,n,o):u}
    ${o.ball?M`<circle class=${bi(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:c,one:d,i:p})=>bv(bi(t,"decorate"),i,c,d,p))}`}function wv(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return M`<path class="powder" d=${t.pipe?Pl(e,n):o} />`}function bv(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],c=Qn($(l.run.now,`/decorations/${i}/rod/diameter`)),d=Qn($(l.run.now,`/decorations/${i}/rod/length`));if(!c||!d)return M`<circle class=${t} cx=${s} cy=${-a} r=${Hf(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=c/2*Math.sqrt(1-_*_),w=d*_+2*b,R=-180/Math.PI*Math.atan2(m,p);return M`<rect class=${t} x=${-w/2} y=${-c/2} width=${w} height=${c} rx=${b} ry=${b?c/2:0}
    transform="translate(${s} ${-a}) rotate(${R})" />`}var Hf=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Al(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function yv(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return M`${Array.from({length:i-1},(s,a)=>{let c=n.left+(n.right-n.left)*(a+1)/i;return M`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function vv(t,e){let n=T(pt(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Al(e)}`.trim()}var kv=t=>`set-up ${t}`;function Lt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=kv(t),c=()=>qt({part:e,fold:a},s);if(ei())return r`${c()}`;i.some(([m,_])=>Kt(m,_))&&ut(a);let d=l.open.has(a),p=io().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${d?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${d||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${d?"true":"false"}
        aria-label="${d?"Close":"Change"} ${e}"
        @click=${()=>ue("open",a)}
      >
        ${d?"Close":"Change"}
      </button>
    </div>
    ${d?r`<div class="lane-body">${c()}</div>`:u}
  </section>`}var at=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var jf=()=>S(kt).length>0,Nf=()=>S(Yt).length>0;function Uf(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function zf(t){let e=t?S(kt).flatMap((n,o)=>qf(t,o)??[]):[];return Lt({name:"decorate",title:"Decorate",drawing:t&&(()=>Xe("decorate",t)),result:e.length?e.map(n=>Tv(t,n)):at(Jf(kt,Qe)),about:[["run",kt.at]],form:()=>r`${t?r`<div class="side">${Ze("decorate",t)}</div>`:u}
        <div class="weights">${t?S(kt).map((n,o)=>xv(t,o)):u}</div>
        ${Kf(kt,Qe,Af)}`})}var Jf=(t,e)=>`${S(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function xv(t,e){let n=qf(t,e);return n?Sv(t,n,e):u}function Vf(t){let e=t?.dust?.length?S(Yt).map((n,o)=>Pv(t,o)):void 0;return Lt({name:"dust",title:"Dust",drawing:t&&(()=>Xe("dust",t)),result:e??at(Jf(Yt,Xs)),about:[["run",Yt.at]],form:()=>r`<div class="side">${t?Ze("dust",t):u}</div>
        <div class="weights">${t?S(Yt).map((n,o)=>Av(t,o)):u}</div>
        ${Kf(Yt,Xs,vf)}`})}var qf=(t,e)=>Uf(t.decorations,S(kt),F("run",`/decorations/${e}/name`),e);function Kf(t,e,n){return r`<div class="all-questions">
    ${S(t).map((o,i)=>r`<section class="questions" id=${z(t,i)} aria-labelledby="${z(t,i)}-title">
          <div class="part-head">
            <h3 id="${z(t,i)}-title">${e(i)}</h3>
            ${Q(t,i,e(i))}
          </div>
          ${qt({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function Tv(t,e){let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=T(et(l.units,bt(e,"make_")));return at(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${wt(t.whole)?", for the whole run":""}.`)}function Sv(t,e,n){return r`<h3>${e.name} ${wt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${P({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:et(l.units,bt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${P({key:`decorations.${n}.each`,label:"Each weighs",note:`${x(e.volume_each_ml,2)} ml`,shown:O(l.units,e.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${ze(e.casting_s)} of casting.</p>`:u} ${Rv(e,n)}`}function Rv(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":T(pt(l.units,a)),s=a=>{let c=(o?.embeds??[]).map(a).filter(d=>d!==null);return c.length?T(pt(l.units,Math.min(...c))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
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
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${x(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${bn(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function Pv(t,e){let n=Gf(t,e);if(!n)return u;let o=tt(t);return at(r`<b>${T(et(l.units,bt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Gf=(t,e)=>Uf(t.dust,S(Yt),F("run",`/dust/${e}/name`),e);function Av(t,e){let n=Gf(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=P({key:`set-up.dust.${e}`,label:n.name,note:tt(t),shown:et(l.units,bt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Yf(t){let e=t?.cut;return Lt({name:"cut",title:"Cut",drawing:t&&(()=>Xe("cut",t)),result:e?Dv(t,e):at("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${e?Mv(t,e):u}
        <div class="all-questions">${bf()}</div>`})}var Dv=(t,e)=>at(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${T(O(l.units,t.piece.fresh_g))} on average, fresh.`);function Mv(t,e){return r`<div class="side">${Ze("cut",t)}</div>
    <div class="weights">
      ${P({key:"cut.bar",label:"A bar on average, fresh",note:Ov(e),shown:O(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${P({key:"cut.offcuts",label:"Offcuts",shown:O(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${Fv(e)}
    </div>`}function Ov(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${x(n,1)} to ${x(o,1)} g`}function Fv(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function Qf(t){return Lt({name:"label",title:"Label",drawing:Lv,result:at(Cv(t)),about:[["run","/label"]],form:()=>r`<div class="more">${Ff()} ${t?wl(t):u}</div>`})}function Cv(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${T(O(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var Lv=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var en="/pour/layers",tn={at:en,in_order:!0},Dl=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],er=()=>S(tn);function Bv(){let t=e=>er().some(n=>e in n);return Dl.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Xf(t){let e=er(),n=Bv();return e.length?r`<h3>
      Layers, lowest first ${t&&tt(t)?r`<small>${tt(t)}</small>`:u}
    </h3>
    ${k({question:"All of them by",at:en,is_told_elsewhere:!0,chosen:n,answers:Dl,puts:o=>Iv(o,t)})}
    <div class="items">${e.map((o,i)=>Wv(o,i,n,t))}</div>
    ${K(tn,"One more layer on top",()=>q(tn,{name:Ev(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${K(tn,"Pour it in layers",()=>q(tn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Ev(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function th(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function Iv(t,e){let n=er(),o=l.is_old?void 0:e,i=(s,a)=>{let c=th(o,s,a);return t==="parts"||!c||t==="depth"&&"tilted"in s?"":t==="depth"?`${x(c.to_mm-c.from_mm,3)} mm`:`${x(c.mass_each_g,3)} g`};return n.map((s,a)=>{let c=tr(a),d=t!=="parts"&&n.length>1&&a===n.length-1;return{...c,...d?{rest:!0}:{[t]:i(s,a)}}})}var tr=t=>X("run",`${en}/${t}`,[...Dl.map(([e])=>e),"rest"]);function Wv(t,e,n,o){let i=`${en}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=th(o,t,e);return r`<div class="part" id=${z(tn,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?Hv(o,a,e):r`<p class="part-title">${s}</p>`} ${I("run",i)}
    ${Nv(t,e,n,s)}
    ${o&&a?a.colours.map((c,d)=>jv(o,c,e,d)):u}
    ${A({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${Vv(i,s)} ${qv(i,e)}
        ${Q(tn,e,s)}`})}
  </div>`}function Hv(t,e,n){return P({key:`pour.layer.${n}`,label:e.name,note:`${ha(pt(l.units,e.to_mm-e.from_mm))} thick, ${ha(O(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?O(l.units,e.g):et(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function jv(t,e,n,o){return P({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${x(e.teaspoons,1)} tsp`:"",shown:_n(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function Nv(t,e,n,o){if(n==="parts")return Uv(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${en}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?Jv(e,n):zv(e,n)}
    >
      Takes the rest
    </button>`}function Uv(t,e,n){let o=`${en}/${e}/parts`,i=s=>()=>{h({typed:void 0}),W("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function zv(t,e){let n=er().map((o,i)=>i===t?{...tr(i),rest:!0}:o.rest?{...tr(i),[e]:""}:o);L("run","takes the rest",en,n)}function Jv(t,e){let n=`${en}/${t}`;L("run","amount of the layer",n,{...tr(t),[e]:""},mt("run",`${n}/${e}`))}function Vv(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${S(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${z(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${Q(n,i,a)}
      </div>
      ${I("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${qe("run",s,a)}
    </div>`})}
  ${K(n,"Add a colour",()=>q(n,{name:"",rate:""},"colour"))}`}var Zf=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function qv(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===S(tn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Pe({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${k({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Zf,puts:s=>s})}
        ${A({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Zf.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var se=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Ml(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=se()==="depth"?n-o:o;h({typed:void 0}),W("run",`/pour/line/${se()}`,`${x(i,2)} mm`)}function eh(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Qn($(l.run.now,`/pour/line/${se()}`));return n===void 0?t.pour.below_brim_mm:se()==="depth"?e-n:n}function Kv(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function Gv(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=eh(t),{share:o,h:i}=If(t,e-n),s=d=>Kv(d,p=>Ml(t,n+p*i)),a=d=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[d.key];p!==void 0&&(d.preventDefault(),Ml(t,n+p))},c=d=>d&&(d.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${x(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${T(pt(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function Yv(t){let{pour:e}=t,n=T(pt(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=tt(t);return at(r`${o}, <b>${T(O(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${T(O(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var nh=()=>se()==="depth"?"Depth":"Below brim";function oh(t){return Lt({name:"pour",title:"Pour",drawing:t&&(()=>Xe("pour",t)),result:t?Yv(t):at(`${Qv()}.`),about:[["run","/pour"]],form:()=>r`${t?Zv(t):Xv()}
        <div class="more">${nr("pour")} ${Xf(t)} ${As("pour")}</div>`})}function Qv(){let t=F("run",`/pour/line/${se()}`);return t?`${t} ${se()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function Zv(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Ml(t,eh(t)+i);return r`<div class="side">
      ${Ze("pour",t,Gv(t))} ${ih(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:nh(),at:`/pour/line/${se()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${P({key:"pour.each",label:"Weigh into each",shown:O(l.units,e.mass_each_g),note:`${x(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${P({key:"pour.mm",label:"1 mm more or less",shown:_t(l.units,e.ml_per_mm,2),note:`${he(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${P({key:"set-up.pour.make",label:"Base to make",note:tt(t),shown:O(l.units,e.make_g),of:`${n}.make_g`})}
      ${P({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var Xv=()=>r`<div class="side">
    ${ih()} ${I("run","/pour/line")}
    ${f({label:nh(),at:`/pour/line/${se()}`,unit:"mm"})}
  </div>`,nr=t=>r`<button type="button" @click=${()=>Vt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function ih(t){let e=n=>{if(n===se())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;L("run","pour line","/pour/line",{[n]:o===void 0?"":`${x(o,3)} mm`})};return rt("The pour line is measured",se(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var tk=[0,50,80,100];function sh(t){let e=t?.pipe;return Lt({name:"pipe",title:"Pipe",drawing:e&&(()=>Xe("pipe",t)),result:e?ek(t,e):at("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?nk(t,e):ok()})}function ek(t,e){let n=tt(t);return at(r`Pipe <b>${x(e.volume_each_ml,0)} ml</b> on each, ${T(O(l.units,e.mass_each_g))} at this
      whipped density; make <b>${T(O(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function nk(t,e){return r`<div class="side">
      ${Ze("pipe",t)}
      ${P({key:"pipe.each",label:"Topping on each",shown:_t(l.units,e.volume_each_ml),note:`${x(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${P({key:"set-up.pipe.make",label:"Topping to make",note:tt(t),shown:O(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${P({key:"pipe.density",label:"Whipped density",note:`overrun ${x(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`})}
      ${nr("pipe")}
    </div>
    <div class="weights">${Ja(e)} ${uh()} ${ik(t)} ${ck(t)}</div>
    <div class="more">${za(e)} ${Ua()}</div>`}var yi=t=>t===0?"pipe":`pipe.whipping${t}`,vi=(t,e)=>`${t.place}.pipe.whippings.${e}`;function rh(t,e){let n=us(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function ok(){return r`<div class="more">${za()}</div>
    <div class="side">${uh()} ${g("run","/pipe/whip_now")===void 0?u:lh()}</div>
    <div class="weights">${Ja()} ${nr("pipe")}</div>
    <div class="more">${Ua()}</div>`}var ah=t=>tt(t)?r`<small>${tt(t)}</small>`:u;function ik(t){return r`<h3>Today's bowl ${ah(t)}</h3>
    ${lh()} ${t.whippings.map((e,n)=>sk(t,e,n))}`}function sk(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${rh(t,e)}
  ${o==null?u:P({key:`${yi(n)}.now`,label:"Enough for",note:s,shown:[it(o,"piece"),""],size:"weigh",of:`${vi(t,n)}.pieces_now`})}
  ${ak(t,e,n)}`}function lh(){let t=g("run","/pipe/whip/holds"),e=t===void 0?di():{holds:t,net:""};return Pe({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:rk})}function rk(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${pi("/pipe/whip_now")}
  </div>`}function ak(t,e,n){return e.readings?.length?A({name:`${yi(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>lk(t,e,n)}):u}function lk(t,e,n){return r`<table class="readings">
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
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${x(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${x(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${bn(`${yi(n)}.readings`,"Show the calculation",`${vi(t,n)}.readings`)}`}function uh(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(F("run",t))?.[1]?.replace(",",".")),n=Kt("run",t);return r`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${tk.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>W("run",t,`${o} %`)}
          >
            ${uk(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function uk(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function ck(t){let e=t.whippings.map(i=>({one:i,words:dk(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${ah(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${rh(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${bn("pipe.limits","How the limits come about",`${vi(t,0)}.limits`)}`}function dk({piping_s:t,lye_spoonfuls:e}){return[t?`${ze(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${ze(e.altogether_s)}`:""].filter(Boolean).join("; ")}function dh(t){return Lt({name:"lye",title:"Lye",drawing:mk,result:t?ch(t).map(pk):at("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${ch(t).map(fk)} ${gk(t)}</div>`:u}
        <div class="more">${Df()} ${Mf(t)}</div>`})}function ch(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=us(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:vi(t,s),pieces:e,key:yi(s)}});return[n,...o]}function pk({title:t,batter:e,slot:n,pieces:o}){let i=Ue(n,o).length?" \u26A0":"";return at(r`${t}: ${x(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${ge(e.superfat_percent.effective)}${i}</b>.`)}var mk=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function fk({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,c=Ue(t,i).length>0,d=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${P({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${x(n.water_to_pure_alkali,2)} : 1 to alkali; water ${x(n.water_percent_of_fats,1)} % of the fats`,shown:[`${x(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${P({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${ge(a)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${Zo(t,d,i)} ${ph(n.superfat_percent)} ${hk(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:c?d:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function ph(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${ge(e)} and ${ge(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${ge(o)} and ${ge(i)}.`,d=s[0],p=d?r` Most of the doubt is ${d.cause}: ${d.remedy}.`:u;return fa(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${c}
    ${d?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${c} Some fat is left over even at the lowest.${p}</p>`}function hk(t,e,n){return t.heat?r`${mh(t.heat)} ${bn(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function mh(t){let e=o=>T(ap(l.units,o)),n=t.cooling.map(o=>`${o.shortest_min*60?ze(o.shortest_min*60):"at once"} to ${ze(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at
    ${e(t.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function gk(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,c,d="")=>P({key:`pot.${i}`,label:s,note:d,shown:a,size:"weigh",of:`${t.place}.lye_pot.${c}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${x(e.strength_percent,1)} %${tt(t)&&`; ${tt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",et(n,bt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,et(n,bt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",et(n,bt(e,"lye_")),"lye_g",_k(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,et(n,bt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${ge(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,et(n,bt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Zo(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?ph(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${T(et(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?mh(e.heat):u}
  </div>`}function _k(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=bt(t,"lye_"),i=et(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${T(i)} with the pot: make up with water to that after cooling`}var ki=new Map,$k=()=>ki.clear(),wk=t=>typeof t?.owned=="number"?t.owned:void 0;function Ol(t){let e=Ft(t,l.files?.moulds);return ki.has(e)||(ki.set(e,void 0),bk(e)),ki.get(e)}async function bk(t){try{ki.set(t,wk(ot((await ft(t)).text))),J()}catch(e){if(!(e instanceof y))throw e}}async function fh(t,e){let n=Ol(t);n!==void 0&&(W("studio",e,n),E(`${n} kept in the studio`),await yk(Ft(t,l.files?.moulds)),Y())}async function yk(t){let e=await Ot(Mt,t);e.shipped||e.theirs||(ht(e,C(e.now,"/owned",void 0)),await de(e),$k())}var vk={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},hh=t=>({run:t,studio:t}),Fl=t=>hh(`/losses/${t}`);function Cl(t,e){return vk[t].map(({name:n,label:o,unit:i,optional:s})=>Rt(hh(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var xn={run:"/money/currency",studio:"/currency"},Ll={run:"/money/prices",studio:"/prices"};function $h(){let[t,e]=[g("run",xn.run),g("studio",xn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[xn,Ll]}var gh=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],_h=t=>l.fats.find(e=>e.id===t)?.name??t;function wh(){if(vn(xn)===void 0)return r`<button type="button" @click=${kk}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${At(e)}/${n}`;return{run:Ll.run+o,studio:Ll.studio+o}};return r`<div class="row">
      ${Rt(xn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${gh().map(e=>r`<div class="row">
            ${Rt(t(e,"paid"),{label:`${_h(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
            ${Rt(t(e,"for"),{label:`for how much ${_h(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
          </div>`)}
    </div>
    ${gh().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function kk(){let t=St()?"studio":"run",e=t==="studio"?xn.studio:xn.run;L(t,"Prices added",e,"",mt(t,e))}var yo=t=>({run:t,studio:t}),Bl=t=>({run:`/pipe/${t}`,studio:`/${t}`}),xk=yo("/scales"),bh=yo("/spoilage"),Tk=yo("/pots");function El(t){return Lt({name:"studio",title:"My studio",result:at(Sk()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>Rk(t)})}function Sk(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function Rk(t){let e=Pk(t),n=e.flatMap(o=>o.all);return r`${St()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Wa(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${lo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>`}function Pk(t){let e=Ht(),n=[{title:"Scales",all:[xk],body:Ak},{title:"Losses",all:[Fl("pour"),...e?[Fl("pipe")]:[]],body:()=>Dk(e,t)},{title:"Rejects",all:[bh],body:Ok},{title:"Pot and lye jug",all:[Tk],body:Fk},{title:"Moulds owned",all:yh().map(({shared:o})=>o),body:Lk},{title:"Prices paid",all:$h(),body:wh}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Bl),body:Ck},{title:"Weigh-cups",all:[],body:nm}),St()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[bo],body:Rl}),n}function Ak(){let t=(e,n)=>r`${Rt(yo(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0})}
    ${Rt(yo(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function Dk(t,e){return r`<div class="row">
      ${Cl("pour",t?"Base":void 0)} ${t?Cl("pipe","Topping"):u}
    </div>
    ${e?Mk(e):u}`}function Mk({pour:t,pipe:e,...n}){let o=tt({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:c})=>`${s}: ${T(O(l.units,a))} in the pieces, ${T(O(l.units,c))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var Ok=()=>Rt(bh,{label:"Rejects",unit:"%",short:!0,optional:!0,hint:"Of all that are made, those that cannot be sold."});function Fk(){let t=(e,n,o)=>Rt(yo(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function Ck(){let t=(n,o,i,s=!1)=>Rt(Bl(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>vn(Bl(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function yh(){return["/pour",...S(kt).map((e,n)=>wo(n))].flatMap(e=>{let n=F("run",`${e}/mould`);return n?[{mould:n,shared:{run:gf(e),studio:`/moulds_owned/${At(Ha(n))}`}}]:[]})}function Lk(){return r`<div class="row">
    ${yh().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=vn(e)===void 0?Ol(t):void 0,i=()=>{fh(t,`/moulds_owned/${At(Ha(t))}`)};return r`${Rt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&St()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Il(t){let e=t&&Yn(t);return r`${Ek(t)}
    <div class="set-up">${vh(e)} ${Bk()} ${El(e)}</div>`}function vh(t){return r`${oh(t)} ${Ht()?sh(t):u}
  ${jf()?zf(t):u} ${Nf()?Vf(t):u}
  ${Gt()?Yf(t):u} ${dh(t)} ${Sl()?Qf(t?.whole):u}`}function Bk(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${Ht()?u:r`<button type="button" @click=${om}>Add a topping</button>${im()}`}
      ${Pf()} ${wf()}
      ${Sl()?u:r`<button type="button" @click=${Of}>Draft the label</button>`}
    </div>
  </section>`}function kh(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${ro("Mould","/pour/mould",l.files?.moulds)}
    ${ro("Base","/pour/formula",l.files?.formulas)}
    ${Ht()?ro("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function Ek(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${kh(t?Ik(t):u)}
    <div class="batches">${t?Cf(t):u} ${kl()}</div>
  </section>`}function Ik(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,c=wt(t)?`${a} batches, ${it(o,"filling")}`:cs(o,i);return P({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function Wk(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(Hk);return[qt({part:"Run"},()=>[kh(),kl()]),...e.map(n=>qt({part:String(l.formulas[n].now.name||"Formula")},()=>Hm(n))),vh(),El()]}var Hk=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;gp(Wk);var jk={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function xh(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${jk[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Th(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function vo(t){let e=Vn(t);return e?.finished_at?"done":e||qn(t)?"under way":"not begun"}var Nk=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function Uk(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>vo(s)===i);return o("under way")??o("not begun")??1}function Wl(){let t=Nk(),e=Uk(t),n=Vn(e),o=Th(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?Th(n.plan,e):o}}var Tn=({kept:t})=>!t&&l.is_old,ko=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var zk=6,Jk={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Rh({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${vo(i)}`;return e>zk?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>Sh(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:rt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${Jk[vo(i)]}</span> ${i}<small>
          ${vo(i)}</small
        >`]),i=>Sh(Number(i)))}function Sh(t){dd(t),E(`Batch ${t}, ${vo(t)}`)}var or="";function Ph(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return Vk(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!hn(n,a).is_done).length,s=()=>i?Ah(e.id):void ta(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Mh(e.begun_at)}; its weights stay as they were then.</p>
    ${or===e.id?Dh(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{ta(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${qn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function Vk({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Mh(n)}.</p>
    ${or===o?Dh("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Uo(e)}):r`<button type="button" @click=${()=>Ah(o)}>Start this batch anew</button>`}
  </div>`}function Ah(t){or=t,J(),dt(U("batch-stays"))}function Dh(t,e,n){let o=()=>{or="",J(),dt(U("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var qk=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Mh=t=>qk.format(new Date(t));var Kk={pour:"Base",pipe:"Topping"},Oh=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Fh(t,e){let[n,o]=[Oh(t),Oh(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${Kk[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},c=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),d=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...c,...d]}var Hl=3,jl=new Map,Nl="";function Gk(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!Ru(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Z(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Fh(n.vessels,o.vessels),c=new Set(ko(n).map(({text:p})=>p)),d=ko(o).flatMap(({text:p})=>c.has(p)?[]:[p]);return a.length||d.length?{told:a,dangers:d,mark:o.mark}:void 0}function Ch(t){let e=Gk(t),{kept:n}=t;if(!e||!n)return u;if(jl.get(n.id)===e.mark)return Zk(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${Yk(e)}
    </p>
    ${Qk(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${gn}</strong> As it is now: ${i}</p>`)}
    ${Nl===n.id?ex(t):Xk(t,e)}
  </div>`}function Yk({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Hl;return r`${t.slice(0,Hl).join("; ")}${n>0?` and ${n} more.`:"."}`}var Qk=({told:t})=>t.length>Hl?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function Zk(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(jl.delete(t),J())}>What has changed</button>
  </div>`}function Xk(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{jl.set(o,e),J(),dt(U("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>tx(t)}>Start this batch anew</button>`:u}
  </div>`}function tx(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Uo(t.number);Nl=o,J(),dt(U("keep-weighing"))}function ex(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Nl="",J(),dt(U("run-title"))},o=()=>{n(),Uo(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Lh=({text:t})=>r`<p class="danger"><strong>${gn}</strong> ${t}</p>`;function Bh(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=ko(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Lh)}</div>`:u}var nx=({vessel:t})=>["lye","lye_pot","share"].includes(t),ox=({batter:t},e)=>!t||!e.batter||t===e.batter;function Eh(t,e){if(!nx(e))return u;let n=ko(t).filter(o=>ox(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Lh(o)} ${ix(o)}`)}</div>`:u}function ix({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${rx}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>sx(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function sx(t){Vt(t),requestAnimationFrame(()=>dt(mt(t,"/superfat")))}function rx(){h({view:"watch"}),dt(U("watch-title"))}var Ul=(t,e)=>r`<p class="do ${Tn(t)?"old":""}">${e}</p>`;function Ih(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${T(pt(l.units,o))} below the brim`;return Ul(t,r`${s}, <b>${T(O(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Wh(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Ul(t,r`Whip until the level weigh-cup holds <b>${T(O(l.units,n.net_g))}</b>.`):u}function Hh(t,{batch:e}){let{pipe:n}=e;return n?Ul(t,r`Pipe <b>${x(n.volume_each_ml,0)} ml</b> on each, ${T(O(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}var jh=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Nh=hs(class extends no{constructor(t){if(super(t),t.type!==Se.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let c of t)i[a]=o?o(c,a):a,s[a]=n(c,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=fp(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let c=this.ut??=[],d=[],p,m,_=0,b=i.length-1,w=0,R=s.length-1;for(;_<=b&&w<=R;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(c[_]===a[w])d[w]=Je(i[_],s[w]),_++,w++;else if(c[b]===a[R])d[R]=Je(i[b],s[R]),b--,R--;else if(c[_]===a[R])d[R]=Je(i[_],s[R]),oo(t,d[R+1],i[_]),_++,R--;else if(c[b]===a[w])d[w]=Je(i[b],s[w]),oo(t,i[_],i[b]),b--,w++;else if(p===void 0&&(p=jh(a,w,R),m=jh(c,_,b)),p.has(c[_]))if(p.has(c[b])){let j=m.get(a[w]),re=j!==void 0?i[j]:null;if(re===null){let nn=oo(t,i[_]);Je(nn,s[w]),d[w]=nn}else d[w]=Je(re,s[w]),oo(t,i[_],re),i[j]=null;w++}else _s(i[b]),b--;else _s(i[_]),_++;for(;w<=R;){let j=oo(t,d[R+1]);Je(j,s[w]),d[w++]=j}for(;_<=b;){let j=i[_++];j!==null&&_s(j)}return this.ut=a,gs(t,d),Pt}});function Uh(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[_e(n)===o?n:e,""]}function zh({batch:t,plan:e,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return ax(o,i,t,n);case"layers":return lx(i,t.pour.layers??[],`${n}.pour.layers`);case"dust":return zl(i.name,t.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:zl(i.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let s=e.decorations.length===1?0:-1;return s<0?void 0:`decorations.${s}.make_g`}case"share":return}}function zl(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function ax(t,e,n,o){let i=Number(/^pipe\.(\d+)\./.exec(t.key)?.[1]??1)-1,[s,a]=t.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],c=(s?.ingredients??[]).findIndex(({name:d,goes_into:p})=>d===e.name&&p===t.vessel);return c<0?void 0:`${a}.ingredients.${c}.g`}function lx(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:zl(t.name,e[o].colours,`${n}.${o}.colours`)}function Jl(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>hn(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Jh(n)}>
    <div class="vessel-head">
      <h3 id=${Jh(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Eh(e,n)}
    ${Nh(n.rows,({key:s})=>s,s=>ux(t,e,n,s))}
  </section>`}var Jh=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function ux(t,e,n,o){let{is_done:i,is_waiting:s}=hn(t.number,o.key),[a,c]=Uh(l.units,o),d=Tn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${H(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>cx(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${d?"old":""}"><b>${a}</b>${c?r` <i>${c}</i>`:u}</span>
    </label>
    ${dx(t,e,n,o)}
  </div>`}function cx(t,{mark:e},n,o){if(!Tn(t))return ld(t.number,e,n.key,o.checked);o.checked=!o.checked,E("Not ticked: what is struck through is not to be weighed.")}function dx(t,e,n,o){let{planned:i}=t,s=i&&i.mark===e.mark?zh(i,n,o):void 0;if(s===void 0)return u;let a=`weigh.${t.number}.${o.key}`,c=l.open.has(a),d=`sum-${a.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?d:u}
      @click=${()=>ue("open",a)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${d}>${Fa(s)}</div>`:u}`}function Vl(t){let e=t.flatMap(({title:n,words:o})=>o.filter(({is_order:i})=>!i).map(({text:i})=>({title:n,text:i})));return e.length?r`<details class="to-know">
    <summary>Heat, cooling and more to know</summary>
    ${e.map(({title:n,text:o})=>r`<p><b>${n}:</b> ${o}</p>`)}
  </details>`:u}function Vh(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||px(t,e),o?.batch===t&&o.reading===e?o:void 0)}var ql=!1;async function px(t,e){let{planned:n}=l;if(ql||!n)return;ql=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Bi({...n,run:C(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...mx(s,t)}})}catch(s){if(!(s instanceof y))throw s;h({whip_today:{...o,complaint:Z(s.complaint)}})}finally{ql=!1}}function mx(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Gl,Kl,fx=t=>Gl??(_e(t)==="oz"||!t&&l.units==="us"?"oz":"g");function qh(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=Zr(t.number),i=fx(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <label for="weigh-cup">Today's weigh-cup, net</label>
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${H(Kl??o)}
        ?disabled=${s}
        @input=${a=>Kl=a.target.value}
        @change=${a=>gx(t,e,a.target.value,i)}
      />
      ${rt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],hx)}
    </div>
    ${_x(t,e,n,o)} ${wx(e,n)}
  </div>`}function hx(t){Gl=t,J()}function gx(t,{mark:e},n,o){Kl=void 0;let i=Zn(n)?`${n.trim()} ${o}`:n.trim();if(Gl=void 0,i===Zr(t.number))return J();if(Tn(t))return E("Not taken: the weights are not those of what is typed."),J();ud(t.number,e,i)}function _x(t,e,n,o){if(!o)return u;let i=Vh(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${$x(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function $x({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${it(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function wx(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
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
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${T(O(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${x(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var xi="pour",Kh=()=>Wl().kept!==void 0;function Gh(){id();let t=Wl(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${xi} aria-labelledby="run-title">
    ${bx(t)} ${vx(t)}
    ${t.weights&&e?r`${Bh(t.weights)} ${Ch(t)} ${kx(t,t.weights)}`:u}
    ${Ph(t)}
  </section>`}function bx(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${yx(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Rh(t)}
    </div>
  </div>`}function yx(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(c=>c.rows),s=i.filter(({key:c})=>hn(t.number,c).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${fe(e,n)}</b>, ${s} of ${i.length} weighed`}function vx({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,c=o!==void 0&&qn(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${pd}>I have looked</button>`:u}
    ${c?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(d=>r`<p class="alarm">${d}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function kx(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),c=o("pipe").length>0,d=p=>p.map(m=>Jl(t,e,m));return r`${Rx(c,i)}
    <div class="batters ${c?"two":""}">
      ${ir("ahead","To have ready",d(s))}
      ${ir("base",c?"Base":"Batter",xx(t,e,o("pour"),s))}
      ${c?ir("topping","Topping",[...d(o("pipe")),Tx(t,e),Vl(o("pipe"))]):u}
      ${ir("after","At the end",d(a))}
    </div>`}var ir=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function xx(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(c=>Jl(t,e,c));return[...s(n.filter(a=>!i(a))),Ih(t,e),...s(n.filter(i)),Vl([...o,...n])]}var Tx=(t,e)=>r`${Wh(t,e)} ${qh(t,e)} ${Hh(t,e)}`,Sx={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function Rx(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>Sx[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===xi)||(xi="pour"),r`<div class="narrow">${rt("What is shown",xi,o,Px)}</div>`)}function Px(t){xi=t,J(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Yh=()=>r`${mo(Kh()?"No new weights can be given.":void 0)} ${Gh()}`;var Ax={"set-up":Il,watch:xh,money:rf,mould:cf,print:hf};function Qh(t){let e=r`${Zi().map(o=>to(o))} ${Qi().map(eo)}`;if(t==="weigh")return r`${e} ${Yh()}`;let{plan:n}=l;return r`${e} ${mo()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?Ax[t](n):Dx(t)}`}function Dx(t){return l.complaint?t==="set-up"?Il():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var Mx=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Xh(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${Mx}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=Ms(t.sell),s=e.trim()&&n&&o&&i,a=()=>{Ct(async()=>{await rs({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name">Name</label>
        <input
          id="new-run-name"
          .value=${H(e)}
          @input=${c=>v(t,{name:c.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Zh(t,"mould","Mould",Ox())} ${Zh(t,"formula","Base",Fx())}
      ${Os("new-run-sell",t.sell,c=>v(t,{sell:c}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var Ox=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],Fx=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Zh(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i}>${n}</label>
    <select id=${i} @change=${a=>v(t,{[e]:a.target.value})}>
      <option value="" .selected=${H(t[e]==="")}>choose ...</option>
      ${o.map(([a,c])=>r`<option value=${a} .selected=${H(a===t[e])}>${c}</option>`)}
    </select>
  </div>`}var Cx=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function eg(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort(Cx),n=t.filter(o=>o.shipped);return r`${fo("Runs")} ${Xh()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?r`<ul class="cards">
              ${e.map(tg)}
            </ul>`:r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      <ul class="cards">
        ${n.map(tg)}
      </ul>
    </section>`}function tg(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":it(e,"piece"),n??"",o?`due ${Xn(o)}`:"",i?`made ${Xn(i)}`:s?`changed ${Xn(s)}`:""].filter(Boolean);return ho({kind:un,one:t,facts:a,picture:Lx(n),open:()=>Ne(t.file)})}var Lx=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;var ig=document.getElementById("page");function sg(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${ef()} ${Gd()}
    <main id="main" tabindex="-1" data-view=${t} class=${l.is_old&&!Jt(t)?"old-now":""}>
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${Ex()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var Bx={runs:eg,formulas:Vm,moulds:Km};function Ex(){let{view:t,fault:e}=l;return pe(t)?Qh(t):Jt(t)?Bx[t]():t==="formula"?Wm():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}_u(()=>{Pm(),ae(sg(),ig),Hx()});ae(sg(),ig);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||Jt(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=Ks();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Sd();N(l.run)&&ee()});function Ix(){if(!l.run.file)return Yl();h({fault:void 0}),N(l.run)&&ee(),Y()}function Yl(){h({fault:void 0}),Bm().catch(t=>{h({fault:Wx(t)}),t instanceof y&&t.may_pass&&window.setTimeout(Yl,2e3)})}function Wx(t){return t instanceof y&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var ng=new ResizeObserver(([{target:t}])=>rg(t.offsetHeight)),og=null;function Hx(){let t=document.querySelector(".foremost");t!==og&&(ng.disconnect(),t?ng.observe(t):rg(0),og=t)}var rg=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Vd();Lm();yu(t=>{po(),t&&Ix()});Yl();
